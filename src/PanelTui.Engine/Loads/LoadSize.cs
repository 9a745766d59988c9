using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>How many volt-amperes a load counts for, and what that rests on.</summary>
/// <remarks>
/// <see cref="Each"/> is one of those alike; <see cref="Volts"/> turns a current into a power; <see cref="FromTable"/> is a
/// motor's current by the code's table: nothing for other ratings, and nothing above the table's end.
/// </remarks>
public sealed record LoadSize(Load Load, Placement Placement, VoltAmperes Each, Volts Volts, TableCurrent? FromTable)
{
    private const decimal Root3 = 1.7320508075688772935274463415m;

    /// <summary>A load that comes to more counts as this, so that no sum can overflow.</summary>
    public static readonly VoltAmperes Most = new(Bounded.Most);

    /// <summary>Whether it was cut down to <see cref="Most"/>.</summary>
    public bool IsAtBound => Power >= Most;

    /// <summary>All that are alike.</summary>
    public VoltAmperes Power => new(Bounded.Product(Each.Value, Load.Count));

    /// <summary>Whether it could be worked out: a motor above the end of its table counts for nothing, and a rule says so.</summary>
    public bool IsKnown => Load.Rating switch
    {
        null => ByThePiece(Load) is not null,
        LoadRating.InHorsepower => FromTable is not null,
        _ => true,
    };

    /// <summary>The section its size rests on; the schedule itself for a rating that is given as a power or a current.</summary>
    public Citation CiteIn(CodeEdition edition) => Load.Rating switch
    {
        null => ByThePiece(Load)?.Section.In(edition) ?? Citation.Schedule,
        LoadRating.InHorsepower => MotorTable.In(edition),
        _ => Citation.Schedule,
    };

    /// <summary>The table that motors of this many phases are read from.</summary>
    public CodeSection MotorTable => Placement.IsThreePhase ? ThreePhaseMotorCurrent.Section : MotorCurrent.Section;

    public static LoadSize Of(Load load, Circuit circuit, PanelSystem system) =>
        Of(load, Placement.Of(load, circuit, system));

    public static LoadSize Of(Load load, Placement placement)
    {
        var volts = load.Volts ?? placement.Volts;
        var current = load.Rating is LoadRating.InHorsepower motor ? TableOf(motor.Output, volts, placement) : null;
        return new LoadSize(load, placement, EachOf(load, volts, placement, current), volts, current);
    }

    /// <summary>What the code counts by the piece where no rating is given; nothing for kinds that need one.</summary>
    internal static (VoltAmperes Each, CodeSection Section)? ByThePiece(Load load) => load.Kind switch
    {
        LoadKind.Receptacle => (UnitLoads.Receptacle, UnitLoads.ReceptacleSection),
        LoadKind.SmallAppliance => (UnitLoads.SmallAppliance, UnitLoads.SmallApplianceSection),
        LoadKind.Laundry => (UnitLoads.Laundry, UnitLoads.LaundrySection),
        LoadKind.Lighting or LoadKind.Range or LoadKind.WallOven or LoadKind.Cooktop or LoadKind.Dryer
            or LoadKind.Appliance or LoadKind.WaterHeater or LoadKind.SpaceHeat or LoadKind.Cooling
            or LoadKind.HeatPump or LoadKind.Motor or LoadKind.Ev or LoadKind.Kitchen or LoadKind.Other => null,
        _ => throw Unnamed.Of(load.Kind),
    };

    private static TableCurrent? TableOf(Horsepower output, Volts volts, Placement placement) =>
        placement.IsThreePhase ? ThreePhaseMotorCurrent.Find(output) : MotorCurrent.Find(output, volts);

    private static VoltAmperes EachOf(Load load, Volts volts, Placement placement, TableCurrent? table) => new(
        load.Rating switch
        {
            LoadRating.InWatts watts => Bounded.Quotient(watts.Power.Value, load.PowerFactor.Value),
            LoadRating.InVoltAmperes power => Bounded.Product(power.Power.Value, 1),
            LoadRating.InAmperes current => PowerOf(current.Current, volts, placement),
            LoadRating.InHorsepower => PowerOf(table?.Current ?? Amperes.Zero, volts, placement),
            _ => Bounded.Product(ByThePiece(load)?.Each.Value ?? 0, Pieces(load)),
        });

    private static decimal PowerOf(Amperes current, Volts volts, Placement placement) => Bounded.Product(
        Bounded.Product(current.Value, volts.Value), placement.IsThreePhase ? Root3 : 1);

    /// <summary>True for receptacle outlets, where the code counts each; a small-appliance circuit counts as one.</summary>
    internal static bool IsCountedByTheOutlet(Load load) => load.Kind == LoadKind.Receptacle;

    private static int Pieces(Load load) => IsCountedByTheOutlet(load) ? load.Outlets : 1;
}
