using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>The legs a load sits on: one to neutral, two from line to line, three balanced.</summary>
public sealed record Placement(PanelSystem System, ImmutableArray<Leg> Legs)
{
    public bool IsToNeutral => Legs.Length == 1;

    public bool IsThreePhase => Legs.Length == 3;

    /// <summary>Where a load of a circuit sits.</summary>
    /// <remarks>
    /// A breaker with more poles than there are legs meets one leg twice. Its load sits on the legs it does meet; that the
    /// breaker cannot be is a rule's business. A pole below the last one is taken for the last.
    /// </remarks>
    public static Placement Of(Load load, Circuit circuit, PanelSystem system)
    {
        var poles = circuit.Legs(system);
        return load.Across == Across.LineToNeutral
            ? new Placement(system, [poles[Math.Clamp(load.Pole, 1, poles.Length) - 1]])
            : new Placement(system, [.. poles.Distinct()]);
    }

    /// <summary>The utilisation voltage of a load that does not state its own.</summary>
    public Volts Volts => IsToNeutral ? System.LineToNeutral : System.LineToLine ?? System.LineToNeutral;

    /// <summary>So much power in this place.</summary>
    public LegLoads Put(VoltAmperes power) => Legs.Length switch
    {
        1 => Nothing with { ToNeutral = OnlyOn(Legs[0], power) },
        2 => Nothing with { ToNext = OnlyOn(First, power) },
        _ => Nothing with { ThreePhase = power },
    };

    /// <summary>A leg's part of a real power: all of it, a half, or a third.</summary>
    public Watts WattsOn(Leg leg, Watts power) => Legs.Contains(leg) ? power / Legs.Length : Watts.Zero;

    public override string ToString() => IsToNeutral ? $"{Legs[0]} to neutral" : string.Join('-', Legs);

    private LegLoads Nothing => LegLoads.None(System);

    /// <summary>Of two legs the one that the other follows: A of A-B, C of C-A.</summary>
    private Leg First => System.Legs.Length == 2 ? Leg.A
        : (Leg)(((int)Legs[0] + 1) % System.Legs.Length) == Legs[1] ? Legs[0] : Legs[1];

    private PerLeg<VoltAmperes> OnlyOn(Leg only, VoltAmperes power) =>
        PerLeg.Of(System, leg => leg == only ? power : VoltAmperes.Zero);
}
