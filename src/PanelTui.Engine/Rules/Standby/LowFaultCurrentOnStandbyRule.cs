using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>On a small source a short circuit may be too weak to trip a breaker at once.</summary>
public sealed class LowFaultCurrentOnStandbyRule : CodeRule
{
    /// <summary>Times its rating: below this a breaker of the usual kind trips by heat alone. From memory.</summary>
    public const int TripsAtOnce = 5;

    public override string Name => "low-fault-current-on-standby";

    public override Severity Severity => Severity.Note;

    public override string Summary =>
        "The source gives enough current for a short time to trip the largest branch breaker at once.";

    public override string Why =>
        "The grid gives thousands of amperes into a short circuit, an inverter or a small generator a few times "
        + "its rating: a breaker may take seconds, or the source shuts down first.";

    public override string Advice =>
        "Read in the source's manual what it does on a short circuit, and keep wires no smaller than their "
        + "breakers ask for.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var breakers = context.Circuits.Where(circuit => !circuit.IsSpare);
        if (SurgeOnLeg(context) is { } surge && breakers.MaxBy(circuit => circuit.Breaker.Rating) is { } largest
            && TripOf(largest) is var trip && surge < trip)
        {
            yield return Found(
                context,
                $"The source gives up to {RuleWords.Beyond(surge, trip)} on a leg for a short time; "
                + $"the {largest.Breaker.Rating} breaker of {RuleWords.Place(largest)} trips at once from about {trip} on.");
        }
    }

    private static Amperes TripOf(Circuit circuit) =>
        new(Bounded.Product(circuit.Breaker.Rating.Value, TripsAtOnce));

    private static Amperes? SurgeOnLeg(RuleContext context)
    {
        var (source, system) = (context.Schedule.Source, context.Panel.System);
        var parts = source?.Arrangement == SourceArrangement.InPhase ? 1 : system.Legs.Length;
        var power = source?.SurgePerLeg ?? (source?.Surge is { } all ? all / parts : null);
        return power is { } onLeg ? onLeg / system.LineToNeutral : null;
    }
}
