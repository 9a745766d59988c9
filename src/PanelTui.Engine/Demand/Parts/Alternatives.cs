using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>What each of several loads that never run together would ask of the feeder.</summary>
/// <remarks>
/// Since 2020 a motor among them counts with the 25 % that 430.24 adds to the largest motor, as far as no motor beside them is
/// larger: the alternative that asks for most is the one to size for.
/// </remarks>
internal sealed class Alternatives
{
    private readonly CountedLoads _counted;
    private readonly ImmutableArray<PlacedLoad> _beside;

    public Alternatives(CountedLoads counted, ImmutableArray<PlacedLoad> exclusive)
    {
        var either = exclusive.ToHashSet(ReferenceEqualityComparer.Instance);
        (_counted, _beside) = (counted, [.. counted.Loads.Where(load => load.IsMotor && !either.Contains(load))]);
    }

    /// <summary>On its worst leg, with all of these running.</summary>
    public VoltAmperes Asks(ImmutableArray<PlacedLoad> running) =>
        _counted.System.Legs.Max(leg => On(leg, running) + Extra(leg, running));

    private VoltAmperes Extra(Leg leg, ImmutableArray<PlacedLoad> running)
    {
        if (!CountsTheLargestMotor(_counted.Edition))
            return VoltAmperes.Zero;
        var above = LargestMotor(leg, running) - LargestMotor(leg, _beside);
        return VoltAmperes.Max(above, VoltAmperes.Zero) * DemandResult.Extra;
    }

    private static bool CountsTheLargestMotor(CodeEdition edition) => edition switch
    {
        CodeEdition.Nec2017 => false,
        CodeEdition.Nec2020 or CodeEdition.Nec2023 => true,
        _ => throw Unnamed.Of(edition),
    };

    private static VoltAmperes On(Leg leg, ImmutableArray<PlacedLoad> loads) =>
        loads.Aggregate(VoltAmperes.Zero, (sum, load) => sum + load.Legs.VoltAmperesOn(leg));

    private static VoltAmperes LargestMotor(Leg leg, ImmutableArray<PlacedLoad> loads) => loads
        .Where(load => load.IsMotor)
        .Aggregate(VoltAmperes.Zero, (most, load) => VoltAmperes.Max(most, load.OneOfThem.VoltAmperesOn(leg)));
}
