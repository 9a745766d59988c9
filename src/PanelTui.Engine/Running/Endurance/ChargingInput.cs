using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>One pole through which a unit takes in what it passes on and what it charges with.</summary>
/// <param name="Leg">Nothing where one pole carries all legs.</param>
/// <param name="Runs">What loads ask of it.</param>
/// <param name="May">What it lets through; nothing where no limit is stated.</param>
public readonly record struct InputPole(Leg? Leg, Watts Runs, Watts? May)
{
    public Watts Passed => May is { } may && Runs > may ? may : Runs;

    /// <summary>What loads ask of it beyond its limit.</summary>
    public Watts Missed => Runs - Passed;

    /// <summary>What is left to charge with; nothing where no limit is stated.</summary>
    public Watts? Room => May - Passed;
}

/// <summary>What a unit takes in while it charges, pole by pole: loads are passed through first, and the charger takes what is left.</summary>
/// <remarks>
/// The charger draws alike on every pole, so the fullest one holds it back, and room on one leg helps no load on another. A unit
/// whose legs are in phase has one pole. Watts are held against volt-amperes: power factor 1.
/// </remarks>
public sealed record ChargingInput
{
    private const decimal Most = 1_000_000_000;

    public required ImmutableArray<InputPole> Poles { get; init; }

    /// <summary>What charging asks for, on all poles.</summary>
    public required Watts Asked { get; init; }

    /// <summary>What it gets.</summary>
    public Watts Charge => Poles.Select(pole => pole.Room).Min() is { } room && room * Poles.Length < Asked ? room * Poles.Length : Asked;

    public Watts Passed => Poles.Aggregate(Watts.Zero, (sum, pole) => sum + pole.Passed);

    /// <summary>What charging asks of each pole.</summary>
    public Watts AskedOfEach => Asked / Poles.Length;

    public static ChargingInput Of(StandbySource source, Charging charging, PerLeg<Watts> runs, PanelSystem system)
    {
        Watts? may = charging.InputLimit is { } each ? new Watts(Math.Clamp(each.Value, 0, Most / 1000) * system.LineToNeutral.Value) : null;
        return new ChargingInput
        {
            Asked = new(Math.Clamp(charging.Power.Value, 0, Most)),
            Poles = source.Arrangement == SourceArrangement.InPhase
                ? [new InputPole(null, runs.Values.Aggregate(Watts.Zero, (sum, leg) => sum + leg), may)]
                : [.. runs.Legs.Select(leg => new InputPole(leg, runs[leg], may))],
        };
    }
}
