using System.Globalization;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Presentation;

/// <summary>Each start with all the others running, leg by leg, against the surge; the one that asks most first.</summary>
internal static class StartRows
{
    private const int NameColumns = 22;

    public static IEnumerable<string> Of(ScenarioRun run, Schedule schedule)
    {
        if (run.Starts.Moments.IsEmpty) return ["Nothing here has a motor or is stated to draw more as it starts."];
        var surge = new StandbySurge(schedule.Source, schedule.Panel.System).Words;
        return
        [
            .. Wrapped.Of(surge, 78), Head(run), .. run.Starts.Moments.SelectMany(Moment), .. AtOnce(run.Starts), .. WaysOut(run, schedule),
            .. ByItself(schedule) ? [.. InOneMoment(run.Starts, schedule), .. InStages(run.Starts)] : Array.Empty<string>(), .. Order(run.Starts),
        ];
    }

    /// <summary>By hand branch breakers are closed one at a time, so nothing closes on all of them.</summary>
    private static bool ByItself(Schedule schedule) => schedule.Transfer?.Kind is not (TransferKind.Manual or TransferKind.Interlock);

    private static string Head(ScenarioRun run) => Row(
        "starts last", "full load", "start", string.Concat(run.Legs.Legs.Select(leg => Cell($"{leg} in all", $"{leg} kVA", run.Legs.Legs.Count()))), "");

    private static IEnumerable<string> Moment(StartMoment moment)
    {
        var start = moment.Starting[0];
        var legs = string.Concat(moment.Asked.System.Legs.Select(leg => Leg(moment, leg)));
        yield return Row(DisplayText.Fit(start.Called, NameColumns), Figure.Of(start.FullLoad), Figure.Of(start.Current), legs, Verdict(moment));
        yield return $"  {start.Words}";
    }

    public static string Verdict(StartMoment moment) => moment.Ok switch
    {
        true when moment.Surge.Worth == SurgeWorth.Counted => "within surge",
        true => "within continuous",
        false => "BEYOND SURGE",
        null when moment.MayOn is null && moment.MayInAll is null => "not to be told",
        null => "above continuous",
    };

    private static IEnumerable<string> AtOnce(StartTable table) => table.AtOnce switch
    {
        null => ["How many may start at once: not to be told without a surge and its time."],
        0 when table.Moments.Length == 1 => ["It does not start with all the others running."],
        0 => ["The largest does not start with all the others running."],
        { } count when count == table.Moments.Length => [count == 1 ? "There is one to start." : $"All {Shown.Exactly(count)} may start at once."],
        1 => ["Any one may start, and no two at once."],
        { } count => [$"Any {Shown.Exactly(count)} may start at once, no more."],
    };

    /// <summary>What each start that is not within the limit asks with the rest off, and what to have off beside it.</summary>
    private static IEnumerable<string> WaysOut(ScenarioRun run, Schedule schedule)
    {
        foreach (var moment in run.Starts.Moments.Where(moment => moment.Ok != true && (moment.MayOn is not null || moment.MayInAll is not null)))
        {
            var relief = StartRelief.Of(moment, run, schedule);
            var (called, alone) = (DisplayText.Clean(moment.Starting[0].Called), relief.Alone);
            var asks = $"{Kva(alone.AskedOn(alone.WorstLeg))} on {alone.WorstLeg}, {Verdict(alone)}";
            var sentence = alone.Ok switch
            {
                true => $"{called} with the rest off: {asks}. For its start have off at least: {RunningRows.Names(relief.Off)}; or fit a soft starter.",
                false => $"{called} even with the rest off: {asks}. A soft starter, or leave it off.",
                null => $"{called} even with the rest off: {asks}, so not to be told without a surge and its time.",
            };
            foreach (var line in Wrapped.Of(sentence, 78)) yield return line;
        }
    }

    private static IEnumerable<string> InOneMoment(StartTable table, Schedule schedule) => table.Together is { Starting.Length: > 1 } all
        ? Wrapped.Of($"All in one moment, {When(schedule)}: {Kva(all.AskedOn(all.WorstLeg))} on {all.WorstLeg}, {Verdict(all)}{Staggered(all, schedule)}.", 78)
        : [];

    private static string Staggered(StartMoment all, Schedule schedule) => all.Ok != true && schedule.Transfer is { LoadManagement: true }
        ? "; see in its settings that the load management staggers them"
        : "";

    private static string When(Schedule schedule) => schedule.Transfer?.Kind switch
    {
        TransferKind.Automatic => "as automatic equipment closes",
        TransferKind.Manual or TransferKind.Interlock or null => "as when the source comes on with everything on",
        var kind => throw Unnamed.Of(kind),
    };

    private static IEnumerable<string> InStages(StartTable table)
    {
        if (table.Together is not { Ok: false, Starting.Length: > 1 }) return [];
        var stages = table.Stages.Select((stage, at) =>
            $"{Shown.Exactly(at + 1)}. {string.Join(" + ", stage.Starting.Select(start => DisplayText.Clean(start.Called)))} "
            + $"({Kva(stage.AskedOn(stage.WorstLeg))} on {stage.WorstLeg}{(stage.Ok == false ? ", beyond" : "")})");
        return Wrapped.Of($"In stages beside what has no motor, each up to speed before the next: {string.Join(", ", stages)}.", 78);
    }

    private static IEnumerable<string> Order(StartTable table)
    {
        if (table.Moments.Length < 2) return [];
        var steps = table.EasiestOrder.Select(step => $"{DisplayText.Clean(step.Starting[0].Called)} ({Kva(step.AskedOn(step.WorstLeg))} on {step.WorstLeg}{(step.Ok == false ? ", beyond" : "")})");
        return Wrapped.Of($"Easiest order beside what has no motor, largest first: {string.Join(", then ", steps)}. Worst: {DisplayText.Clean(table.Worst!.Starting[0].Called)} last.", 78);
    }

    /// <summary>Three legs have no room for the unit beside each.</summary>
    private static string Leg(StartMoment moment, Leg leg) =>
        Cell(Kva(moment.AskedOn(leg)), Shown.Rounded(moment.AskedOn(leg).Value / 1000, 2), moment.Asked.System.Legs.Length);

    private static string Cell(string wide, string narrow, int legs) => legs > 2 ? $"{narrow,7}" : $"{wide,10}";

    private static string Kva(VoltAmperes power) => Shown.Rounded(power.Value / 1000, 2, "kVA");

    private static string Row(string called, string fullLoad, string start, string legs, string verdict) =>
        string.Create(CultureInfo.InvariantCulture, $"{called,-NameColumns}{fullLoad,9}{start,9}{legs}  {verdict}").TrimEnd();
}
