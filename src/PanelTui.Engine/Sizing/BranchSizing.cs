using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What a branch circuit has to be for its load, against the breaker and the wire it has.</summary>
public sealed record BranchSizing
{
    /// <summary>The 10 A breakers of 2023 are not proposed: they are for lighting alone. From memory.</summary>
    public static readonly Amperes SmallestBreaker = 15.A;

    public required Circuit Circuit { get; init; }

    public required CodeEdition Edition { get; init; }

    /// <summary>Of a group only the largest.</summary>
    public required ImmutableArray<PlacedLoad> Loads { get; init; }

    public required BranchLoad Load { get; init; }

    public required WiringConditions Conditions { get; init; }

    /// <summary>Nothing but motors on a circuit that has them, or a compressor's nameplate to go by.</summary>
    public required bool IsMotorCircuit { get; init; }

    /// <summary>Only on a motor circuit without a nameplate maximum.</summary>
    public DeviceRange? Range { get; init; }

    /// <summary>The smallest wire in the metal that is stated, else in copper; nothing without a load or above the table.</summary>
    public ConductorFit? Smallest { get; init; }

    /// <summary>The stated wire in its place; nothing where none is stated or the table does not have it.</summary>
    public ConductorFit? Wire { get; init; }

    /// <summary>Nothing without a wire, a length or a load.</summary>
    public BranchDrop? Drop { get; init; }

    public Amperes Breaker => Circuit.Breaker.Rating;

    /// <summary>The smallest standard breaker for the load; nothing without a load, and above the table.</summary>
    public Amperes? StandardBreaker => Load.Conductor.Required <= Amperes.Zero ? null
        : StandardRatings.NextUp(Amperes.Max(Load.Conductor.Required, SmallestBreaker), Edition);

    /// <summary>Several receptacles for portable loads forbid the next size up, 240.4(B)(1).</summary>
    public ConductorProtection Protection => new(RoundsUp: !HasSeveralReceptacles, HoldsSmallLimits: !IsMotorCircuit, Edition);

    /// <summary>Nothing without a wire and a load to size it by.</summary>
    public GroundingSize? Grounding =>
        Circuit.Wire is { } wire && Smallest is { } least ? GroundingSize.Of(Breaker, least.Conductor, wire) : null;

    /// <summary>By the breaker, for the wire it has or the smallest one.</summary>
    public Conductor? GroundingConductor => Grounding is { } sized ? sized.Conductor : Tables(Circuit.Wire?.Metal ?? ConductorMetal.Copper);

    private bool HasSeveralReceptacles => Loads.Any(load =>
        load.Load.Kind is LoadKind.SmallAppliance or LoadKind.Laundry
        || (load.Load.Kind == LoadKind.Receptacle && (load.Load.Outlets > 1 || load.Load.Count > 1)));

    /// <summary>Every circuit of the schedule, in the order of the file.</summary>
    public static ImmutableArray<BranchSizing> AllOf(Schedule schedule, ConnectedLoad connected, VoltageDrop? feeder)
    {
        var loads = connected.Loads.ToLookup(load => load.Circuit.Ordinal);
        return [.. schedule.Circuits.Select(circuit => Of(circuit, [.. loads[circuit.Ordinal]], schedule, feeder))];
    }

    private static BranchSizing Of(
        Circuit circuit, ImmutableArray<PlacedLoad> all, Schedule schedule, VoltageDrop? feeder)
    {
        var loads = Noncoincident.Largest(all);
        var load = BranchLoad.Of(loads, schedule.Panel.System);
        var edition = schedule.Code.Edition;
        var sizing = new BranchSizing
        {
            Circuit = circuit,
            Edition = edition,
            Loads = loads,
            Load = load,
            Conditions = WiringConditions.OfBranch(schedule, circuit.Breaker.Rating),
            IsMotorCircuit = !loads.IsEmpty && loads.All(IsByMotorRules),
            Range = DeviceRange.Of(loads, load.AtFull, edition),
            Drop = DropOf(circuit, loads, schedule.Panel.System, feeder),
        };
        return sizing.WithWire();
    }

    private BranchSizing WithWire() => this with
    {
        Wire = Circuit.Wire is { } wire ? Conditions.Fit(wire) : null,
        Smallest = Load.Conductor.Required <= Amperes.Zero ? null : ConductorChoice.Smallest(
            Circuit.Wire?.Metal ?? ConductorMetal.Copper,
            Load.Conductor,
            Conditions,
            IsMotorCircuit ? null : Breaker,
            Protection),
    };

    private static bool IsByMotorRules(PlacedLoad load) => load.IsMotor || load.Load.MinimumCircuitAmpacity is not null;

    private static BranchDrop? DropOf(
        Circuit circuit, ImmutableArray<PlacedLoad> loads, PanelSystem system, VoltageDrop? feeder) =>
        circuit is { Wire: { } wire, Length: { } length } && !loads.IsEmpty
            ? BranchDrop.Of(new WireRun(wire, Conduit.Pvc, length), loads, system, feeder)
            : null;

    private Conductor? Tables(ConductorMetal metal) => Codes.Tables.GroundingConductor.Find(Breaker, metal);
}
