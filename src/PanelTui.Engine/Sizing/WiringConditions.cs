using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What decides how much of a conductor's ampacity counts: terminals, insulation, heat, and others beside it.</summary>
public sealed record WiringConditions(
    TemperatureColumn Terminals, TemperatureColumn Insulation, Celsius Ambient, int CurrentCarrying, CodeEdition Edition)
{
    /// <summary>Assumed where nobody wrote down the insulation. Common practice, no source.</summary>
    public static readonly Celsius UsualInsulation = 75.DegC;

    /// <summary>As many as the ampacities are printed for.</summary>
    private const int Unadjusted = 3;

    /// <summary>Nothing where the insulation must not be used in that heat.</summary>
    public decimal? AmbientFactor => AmbientCorrection.Find(Ambient, Insulation);

    public Percent Grouping => GroupingAdjustment.Find(CurrentCarrying);

    /// <summary>The column that counts at the ends: no warmer than the terminals, nor than the insulation.</summary>
    public TemperatureColumn AtEnds => TemperatureColumns.Cooler(Terminals, Insulation);

    public static WiringConditions OfFeeder(Schedule schedule, Amperes device) => new(
        TerminalTemperatures.For(schedule.Panel.Terminals, device),
        TemperatureColumns.Reached(schedule.Feeder?.Insulation ?? UsualInsulation),
        schedule.Feeder?.Ambient ?? AmbientCorrection.Basis,
        schedule.Feeder?.CurrentCarrying ?? Unadjusted,
        schedule.Code.Edition);

    /// <summary>Of a branch circuit no key tells insulation, heat or grouping: the terminals decide.</summary>
    public static WiringConditions OfBranch(Schedule schedule, Amperes device) => new(
        TerminalTemperatures.For(schedule.Panel.Terminals, device),
        TemperatureColumns.Reached(UsualInsulation),
        AmbientCorrection.Basis,
        Unadjusted,
        schedule.Code.Edition);

    /// <summary>Nothing for a size that the ampacity table does not have.</summary>
    public ConductorFit? Fit(Conductor conductor)
    {
        if (ConductorAmpacity.Find(conductor, AtEnds) is not { } atEnds
            || ConductorAmpacity.Find(conductor, Insulation) is not { } along)
            return null;
        return new ConductorFit(conductor, atEnds, along * (AmbientFactor ?? 0) * Grouping);
    }
}
