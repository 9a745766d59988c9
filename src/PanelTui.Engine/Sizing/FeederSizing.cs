using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What the feeder has to be: its device, its conductors, its grounding conductor, and what it loses on the way.</summary>
public sealed record FeederSizing
{
    public static readonly CodeSection Section = Nec.Section("215.3");

    public static readonly CodeSection ConductorSection = Nec.Section("215.2(A)(1)");

    public required CodeEdition Edition { get; init; }

    public required ConductorLoad Load { get; init; }

    /// <summary>Nothing above the last standard rating, 6000 A.</summary>
    public required Amperes? StandardOcpd { get; init; }

    /// <summary>What the conductors are sized for: the device ahead as stated, and no less than the standard one.</summary>
    public required Amperes Device { get; init; }

    public required WiringConditions Conditions { get; init; }

    /// <summary>The smallest in copper; nothing above the table's end.</summary>
    public ConductorFit? Copper { get; init; }

    /// <summary>The smallest in the metal of the stated conductor where that is not copper.</summary>
    public ConductorFit? OtherMetal { get; init; }

    /// <summary>The stated conductor in its place; nothing where none is stated or the table does not have it.</summary>
    public ConductorFit? Stated { get; init; }

    /// <summary>Nothing where the length is not stated, or the size is not in the tables.</summary>
    public VoltageDrop? VoltageDrop { get; init; }

    public GroundingSize? Grounding { get; init; }

    /// <summary>The minimum ampacity of the worst leg.</summary>
    public Amperes Required => Load.Required;

    /// <summary>The smallest conductor that will do, in the metal that is stated, else in copper.</summary>
    public Conductor? Conductor => Smallest?.Conductor;

    /// <summary>The equipment grounding conductor; nothing above the table's end.</summary>
    public Conductor? GroundingConductor => Grounding?.Conductor;

    public ConductorProtection Protection => new(RoundsUp: true, HoldsSmallLimits: true, Edition);

    /// <summary>Nothing where there is no conductor to judge.</summary>
    public bool? StatedCarries => Stated?.Carries(Load);

    private ConductorFit? Smallest => OtherMetal ?? Copper;

    public static FeederSizing Of(Schedule schedule, DemandResult demand)
    {
        var standard = StandardRatings.NextUp(demand.MinimumAmpacity, demand.Edition);
        var device = Amperes.Max(
            SupplyDevices.Of(schedule).AheadOfFeeder ?? Amperes.Zero, standard ?? demand.MinimumAmpacity);
        var conditions = WiringConditions.OfFeeder(schedule, device);
        var sizing = new FeederSizing
        {
            Edition = demand.Edition,
            Load = new ConductorLoad(demand.MinimumAmpacity, FeederLoad.Calculated(demand)),
            StandardOcpd = standard,
            Device = device,
            Conditions = conditions,
        };
        return sizing.WithConductors(schedule.Feeder).WithRun(schedule.Feeder, demand);
    }

    private FeederSizing WithConductors(Feeder? feeder) => this with
    {
        Copper = InMetal(ConductorMetal.Copper),
        OtherMetal = feeder?.Conductor is { Metal: not ConductorMetal.Copper and var metal } ? InMetal(metal) : null,
        Stated = feeder?.Conductor is { } stated ? Conditions.Fit(stated) : null,
    };

    private FeederSizing WithRun(Feeder? feeder, DemandResult demand)
    {
        var used = feeder?.Conductor ?? Conductor;
        return this with
        {
            Grounding = Conductor is { } least && used is not null ? GroundingSize.Of(Device, least, used) : null,
            VoltageDrop = used is not null && feeder?.Length is { } length
                ? FeederLoad.Drop(new WireRun(used, feeder.Conduit, length), demand)
                : null,
        };
    }

    private ConductorFit? InMetal(ConductorMetal metal) =>
        ConductorChoice.Smallest(metal, Load, Conditions, Device, Protection);
}
