using System.Globalization;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>What a scenario asks of each leg, against every limit, and what to shed.</summary>
internal static class RunningRows
{
    public static IEnumerable<string> Of(ScenarioRun run, Schedule schedule)
    {
        yield return Row("", "running", "continuous", "80 % line", "amps", "outlet", "breaker");
        foreach (var leg in run.Legs.Legs) yield return Leg(run, leg);
        var (inAll, planned) = (At(run, BoundKind.InAll, null), At(run, BoundKind.Planning, null));
        var (outlet, breaker) = (At(run, BoundKind.Outlet, null), At(run, BoundKind.Breaker, null));
        yield return Row("all", Figure.Of(run.Running), May(inAll), May(planned), outlet is null && breaker is null ? "" : InAmperes(run), May(outlet), May(breaker));
        yield return Row("neutral", "", "", "", Figure.Of(run.Neutral), "", "");
        foreach (var line in Nearest(run).Concat(Planned(run)).Concat(Remarks(run, schedule))) yield return line;
    }

    /// <summary>What wants doing: loads that are too large or dead, shared neutrals in phase, and what to shed.</summary>
    public static IEnumerable<string> Remarks(ScenarioRun run, Schedule schedule) =>
        [.. Large(run), .. Dead(run), .. Shared(run, schedule), .. Shed(run, schedule)];

    private static string Leg(ScenarioRun run, Leg leg) => Row(
        $"leg {leg}",
        Figure.Of(run.Legs[leg].Running),
        May(At(run, BoundKind.Continuous, leg)),
        May(At(run, BoundKind.Planning, leg)),
        Figure.Of(run.Legs[leg].Amperes),
        May(At(run, BoundKind.Outlet, leg)),
        May(At(run, BoundKind.Breaker, leg)));

    /// <summary>The limit that is nearest, in one sentence.</summary>
    public static IEnumerable<string> Nearest(ScenarioRun run) => run.Binding is not { } nearest
        ? ["No limit of the source is stated, so nothing is judged."]
        : nearest.Ok
            ? [$"Nearest limit: {Left(nearest)}"]
            : [$"OVER {nearest.Called}: {Figure.Of(nearest.Share)} of it, {Amount(-nearest.Spare, nearest.Unit)} too much."];

    private static IEnumerable<string> Planned(ScenarioRun run) =>
        from bound in run.Bounds
        where bound is { Kind: BoundKind.Planning, Ok: false } && (run.Binding?.Ok ?? true)
        select $"Above the 80 % line ({(bound.Leg is { } leg ? $"leg {leg}" : "all legs")}) by {Amount(-bound.Spare, bound.Unit)}: for hours on end plan for less.";

    private static IEnumerable<string> Large(ScenarioRun run) =>
        from load in run.LargerThanOneUnit
        select $"{Clean(load.Circuit)} alone asks for {Figure.Of(load.RunningWatts)}: more than one leg gives, wherever it sits.";

    private static IEnumerable<string> Dead(ScenarioRun run) => run.Dead.IsEmpty
        ? []
        : Wrapped.Of($"No voltage between legs in phase, so these stand still: {Names(run.Dead.Select(load => load.Circuit))}.", 78);

    /// <summary>With the legs in phase the currents add on a shared neutral.</summary>
    private static IEnumerable<string> Shared(ScenarioRun run, Schedule schedule) =>
        from shared in schedule.Source?.Arrangement == SourceArrangement.InPhase ? SharedNeutral.Among(run.Circuits, run.Loads) : []
        let most = shared.Circuits.SelectMany(circuit => circuit.Spaces.Select(_ => circuit.Breaker.Rating.Value)).Sum()
        from line in Wrapped.Of(
            $"DANGER {Names(shared.Circuits)}: shared neutral. In phase the currents add on it, up to {Shown.Exactly(most)} A, and no breaker sees the sum: leave off.", 78)
        select line;

    private static IEnumerable<string> Shed(ScenarioRun run, Schedule schedule)
    {
        if (run.Binding?.Ok ?? true) return [];
        var shedding = Shedding.Of(run, schedule);
        if (shedding.Shed.IsEmpty) return ["Nothing is left to shed that would help."];
        var order = string.Join(", ", shedding.Shed.Select((circuit, index) =>
            $"{(shedding.Shed.Length > 1 ? $"{Shown.Exactly(index + 1)}. " : "")}{Clean(circuit)} ({(circuit.Priority is { } turn ? $"priority {Shown.Exactly(turn)}" : "no priority")})"));
        var then = shedding switch
        {
            { Fits: false } => "Even then it does not fit.",
            { Left.Binding: { } nearest } => $"Then the nearest limit is {Left(nearest)}",
            _ => "",
        };
        return Wrapped.Of($"Shed{(shedding.Shed.Length > 1 ? " in this order" : "")}: {order}. {then}".TrimEnd(), 78);
    }

    /// <summary>`leg A, continuous power: 68.0 % of it, 1600 W left.`</summary>
    private static string Left(SourceBound nearest) =>
        $"{nearest.Called}: {Figure.Of(nearest.Share)} of it, {Amount(nearest.Spare, nearest.Unit)} left.";

    public static string Names(IEnumerable<Circuit> circuits) =>
        string.Join(", ", circuits.DistinctBy(circuit => circuit.Ordinal).Select(Clean));

    private static string Clean(Circuit circuit) => DisplayText.Clean(circuit.Called);

    private static string InAmperes(ScenarioRun run) => Amount(run.Legs.Values.Sum(leg => leg.Amperes.Value), "A");

    private static string Amount(decimal amount, string unit) => Shown.Rounded(amount, unit == "A" ? 1 : 0, unit);

    private static string May(SourceBound? bound) => bound is null ? "" : $"{(bound.Ok ? "" : "! ")}{Amount(bound.May, bound.Unit)}";

    private static SourceBound? At(ScenarioRun run, BoundKind kind, Leg? leg) =>
        run.Bounds.FirstOrDefault(bound => bound.Kind == kind && bound.Leg == leg);

    private static string Row(string leg, string running, string continuous, string planned, string amps, string outlet, string breaker) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{leg,-8}{running,10}{continuous,12}{planned,12}{amps,11}{outlet,11}{breaker,11}").TrimEnd();
}
