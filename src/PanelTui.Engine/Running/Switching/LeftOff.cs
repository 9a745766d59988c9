using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Switching;

/// <summary>The circuits that stay off on standby whatever the scenario, and what else a scenario asks for.</summary>
/// <param name="Circuits">Off on standby at any time.</param>
/// <param name="Sentences">Why, each with its circuits; then what each scenario sheds to fit.</param>
internal sealed record LeftOff(ImmutableArray<Circuit> Circuits, ImmutableArray<string> Sentences)
{
    public static LeftOff Of(Assessment assessment)
    {
        var schedule = assessment.Schedule;
        List<(string Why, ImmutableArray<Circuit> Circuits)> always =
        [
            ("Not on standby by the schedule", [.. schedule.Circuits.Where(circuit => circuit is { Standby: false, IsSpare: false })]),
            .. schedule.Source is { Arrangement: SourceArrangement.InPhase } ? InPhase(assessment) : [],
        ];
        always.RemoveAll(one => one.Circuits.IsEmpty);
        return new LeftOff(
            [.. always.SelectMany(one => one.Circuits).DistinctBy(circuit => circuit.Ordinal)],
            [.. always.Select(one => $"{one.Why}: {SwitchingFacts.Listed(one.Circuits)}."), .. Shed(assessment)]);
    }

    private static IEnumerable<(string Why, ImmutableArray<Circuit> Circuits)> InPhase(Assessment assessment)
    {
        var loads = assessment.Connected.Loads;
        var dead = loads.Where(load => !load.Placement.IsToNeutral).Select(load => load.Circuit).DistinctBy(circuit => circuit.Ordinal);
        yield return ("Nothing between the legs, both are in phase", [.. dead]);
        foreach (var shared in SharedNeutral.Among(assessment.Schedule.Circuits, loads))
            yield return ("Shared neutral, on which the currents would add unseen", shared.Circuits);
    }

    private static IEnumerable<string> Shed(Assessment assessment) =>
        from run in assessment.Scenarios
        where run.Binding is { Ok: false }
        let shed = Shedding.Of(run, assessment.Schedule).Shed
        where shed.Length > 0
        select $"For {run.Name} to fit: {SwitchingFacts.Listed(shed)}{(shed.Length > 1 ? ", in this order" : "")}.";
}
