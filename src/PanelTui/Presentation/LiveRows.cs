using System.Globalization;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Presentation;

/// <summary>All that the source feels at one glance: each leg, the worst start, the hours, and one unit alone.</summary>
internal static class LiveRows
{
    /// <summary>Room for every column of the legs; with less, the 80 % line and the limit in amperes are left out.</summary>
    private const int Wide = 76;

    private const int NameColumns = 18;

    public static IEnumerable<string> Of(ScenarioRun run, Schedule schedule, int columns) =>
    [
        .. Legs(run, columns >= Wide),
        .. Sentences(run, schedule).SelectMany(sentence => Wrapped.Of(sentence, columns)),
    ];

    private static IEnumerable<string> Legs(ScenarioRun run, bool wide)
    {
        yield return Row(wide, "", "running", "80 % line", "amperes", "worst start");
        foreach (var leg in run.Legs.Legs)
        {
            yield return Row(
                wide,
                $"leg {leg}",
                Of(run.Legs[leg].Running.Value, At(run, leg, BoundKind.Continuous)?.May, 0, "W"),
                Line(At(run, leg, BoundKind.Planning)),
                Of(run.Legs[leg].Amperes.Value, wide ? InAmperes(run, leg) : null, 1, "A"),
                run.Starts.Worst is { } worst ? Of(worst.AskedOn(leg).Value / 1000, worst.MayOn?.Value / 1000, 2, "kVA") : "none");
        }

        if (At(run, null, BoundKind.InAll) is { } all)
        {
            yield return Row(
                wide, "all", Of(all.Asked, all.May, 0, "W"), Line(At(run, null, BoundKind.Planning)), "",
                run.Starts.Worst is { MayInAll: { } may } most ? Of(most.Asked.Total.Value / 1000, may.Value / 1000, 2, "kVA") : "");
        }
    }

    /// <summary>Each short enough for a row of 56 columns, whatever the circuits are called.</summary>
    private static IEnumerable<string> Sentences(ScenarioRun run, Schedule schedule)
    {
        yield return $"{Nearest(run)}. Neutral {Figure.Of(run.Neutral)}.";
        yield return Starts(run.Starts);
        if (schedule.Source?.Battery is { } battery)
        {
            var hours = run.ToReserve is { } known ? Figure.Of(known) : "over a year";
            yield return $"Lasts {hours} to {battery.Reserve}, nothing charging ({Figure.Of(run.Average)}).";
        }

        if (OneUnit.Of(run, schedule) is { } one)
        {
            var still = one.Alone.Dead.DistinctBy(load => load.Circuit.Ordinal).Count();
            var shared = one.Shared.IsEmpty ? "" : ", SHARED NEUTRALS";
            yield return $"One unit alone: {Shown.Exactly(still)} dead at 240 V{shared}; {AtShare(one.Alone)}.";
        }
    }

    private static string Nearest(ScenarioRun run) => run.Binding switch
    {
        null => "No limit stated",
        { Ok: true } nearest => $"{Figure.Of(nearest.Share)} of {nearest.Called}",
        var passed => $"OVER {passed.Called}: {Figure.Of(passed.Share)}",
    };

    private static string AtShare(ScenarioRun alone) => alone.Binding switch
    {
        null => "no limit stated",
        { Ok: true } nearest => $"it runs at {Figure.Of(nearest.Share)}",
        var passed => $"OVER, {Figure.Of(passed.Share)}",
    };

    private static string Starts(StartTable starts)
    {
        if (starts.Worst is not { } worst) return "Starts: nothing here has a motor.";
        var atOnce = starts.AtOnce is { } count ? $"{Shown.Exactly(count)} of {Shown.Exactly(starts.Moments.Length)} at once" : "at once: not to be told";
        return $"Start: {DisplayText.Fit(worst.Starting[0].Called, NameColumns).TrimEnd()}, {StartRows.Verdict(worst)}; {atOnce}.";
    }

    private static string Of(decimal asked, decimal? may, int decimals, string unit) => may is { } limit
        ? $"{(asked > limit ? "! " : "")}{Shown.Rounded(asked, decimals)} of {Shown.Rounded(limit, decimals, unit)}"
        : Shown.Rounded(asked, decimals, unit);

    private static string Line(SourceBound? planned) =>
        planned is null ? "" : $"{(planned.Ok ? "" : "! ")}{Shown.Rounded(planned.May, 0, planned.Unit)}";

    /// <summary>The smaller of what outlet and breaker let through.</summary>
    private static decimal? InAmperes(ScenarioRun run, Leg leg) =>
        new[] { At(run, leg, BoundKind.Outlet)?.May, At(run, leg, BoundKind.Breaker)?.May }.Min();

    private static SourceBound? At(ScenarioRun run, Leg? leg, BoundKind kind) =>
        run.Bounds.FirstOrDefault(bound => bound.Kind == kind && bound.Leg == leg);

    private static string Row(bool wide, string leg, string running, string planned, string amperes, string start) => (wide
        ? string.Create(CultureInfo.InvariantCulture, $"{leg,-6}{running,18}{planned,12}{amperes,18}{start,22}")
        : string.Create(CultureInfo.InvariantCulture, $"{leg,-6}{running,18}{amperes,10}{start,22}")).TrimEnd();
}
