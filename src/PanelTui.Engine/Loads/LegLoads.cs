using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>Volt-amperes by the conductors they sit between, so that legs, neutral and factors all follow from one sum.</summary>
/// <param name="System">Both sides of a sum must have the same one.</param>
/// <param name="ToNeutral">From each leg to neutral.</param>
/// <param name="ToNext">From each leg to the next: A-B, B-C, C-A. On two legs all of it is A-B and stands under A.</param>
/// <param name="ThreePhase">Balanced over three legs.</param>
public sealed record LegLoads(
    PanelSystem System, PerLeg<VoltAmperes> ToNeutral, PerLeg<VoltAmperes> ToNext, VoltAmperes ThreePhase)
{
    private const double Root3 = 1.7320508075688772;

    public VoltAmperes Total
    {
        get
        {
            var total = ThreePhase;
            foreach (var leg in System.Legs)
                total += ToNeutral[leg] + ToNext[leg];
            return total;
        }
    }

    /// <summary>The leg with the most current, the first of equals.</summary>
    public Leg WorstLeg => System.Legs.MaxBy(AmperesOn);

    /// <summary>The current of the leg that carries most.</summary>
    public Amperes WorstAmperes => AmperesOn(WorstLeg);

    public static LegLoads None(PanelSystem system)
    {
        var nothing = PerLeg.Of(system, _ => VoltAmperes.Zero);
        return new LegLoads(system, nothing, nothing, VoltAmperes.Zero);
    }

    public static LegLoads operator +(LegLoads left, LegLoads right) => left.With(right, (one, other) => one + other);

    public static LegLoads operator -(LegLoads left, LegLoads right) => left.With(right, (one, other) => one - other);

    public static LegLoads operator *(LegLoads loads, Percent factor) => loads.Select(power => power * factor);

    /// <summary>The same loads scaled so that <paramref name="whole"/> of them becomes <paramref name="part"/>.</summary>
    public LegLoads Share(VoltAmperes part, VoltAmperes whole) =>
        whole.Value == 0 ? None(System) : Select(power => new VoltAmperes(power.Value * part.Value / whole.Value));

    /// <summary>All to neutral, half of each line-to-line load, a third of the three-phase ones.</summary>
    public VoltAmperes VoltAmperesOn(Leg leg) =>
        ToNeutral[leg] + ((ToNext[leg] + ToNext[Before(leg)]) / 2) + (ThreePhase / 3);

    /// <summary>On 120/240 V exact; on a wye the phasor sum of the currents at unity power factor.</summary>
    public Amperes AmperesOn(Leg leg) => System.IsWye
        ? (ToNeutralOn(leg) + BalancedOn(leg) + Between(leg) - Between(Before(leg))).Magnitude
        : VoltAmperesOn(leg) / System.LineToNeutral;

    /// <summary>What the neutral carries with all of this on: line-to-line loads put nothing on it.</summary>
    public Amperes Neutral(SourceArrangement arrangement)
    {
        if (arrangement == SourceArrangement.InPhase || System.Legs.Length == 1)
            return SumToNeutral / System.LineToNeutral;
        if (!System.IsWye)
            return new VoltAmperes(Math.Abs(ToNeutral[Leg.A].Value - ToNeutral[Leg.B].Value)) / System.LineToNeutral;
        return System.Legs.Aggregate(Phasor.Zero, (sum, leg) => sum + ToNeutralOn(leg)).Magnitude;
    }

    private VoltAmperes SumToNeutral => ToNeutral.Values.Aggregate((sum, power) => sum + power);

    private Leg Before(Leg leg) => (Leg)(((int)leg + System.Legs.Length - 1) % System.Legs.Length);

    private Phasor ToNeutralOn(Leg leg) =>
        Phasor.At((double)(ToNeutral[leg] / System.LineToNeutral).Value, System.DegreesOf(leg));

    /// <summary>The current from a leg to the next; their voltage is 30 degrees ahead of the leg's own.</summary>
    private Phasor Between(Leg leg) =>
        Phasor.At((double)ToNext[leg].Value / (double)System.LineToLine!.Value.Value, System.DegreesOf(leg) + 30);

    private Phasor BalancedOn(Leg leg) => Phasor.At(
        (double)ThreePhase.Value / (Root3 * (double)System.LineToLine!.Value.Value), System.DegreesOf(leg));

    private LegLoads Select(Func<VoltAmperes, VoltAmperes> map) =>
        new(System, ToNeutral.Select(map), ToNext.Select(map), map(ThreePhase));

    private LegLoads With(LegLoads other, Func<VoltAmperes, VoltAmperes, VoltAmperes> join) => new(
        System,
        PerLeg.Of(System, leg => join(ToNeutral[leg], other.ToNeutral[leg])),
        PerLeg.Of(System, leg => join(ToNext[leg], other.ToNext[leg])),
        join(ThreePhase, other.ThreePhase));
}
