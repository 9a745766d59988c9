using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Motors;

/// <summary>A motor that its table does not reach counts for nothing, which nobody may overlook.</summary>
public sealed class MotorOutsideTableRule : CodeRule
{
    public override string Name => "motor-outside-table";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A motor rated in hp has a row in the table of motor currents.";

    public override string Why => "What counts for nothing makes every figure too small.";

    public override string Advice => "Give its current from the nameplate in amperes.";

    public override CodeSection? Section => MotorCurrent.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from load in context.Connected.Loads
        where !load.Size.IsKnown && load.Load.Rating is LoadRating.InHorsepower
        select Missing(load, (LoadRating.InHorsepower)load.Load.Rating!, load.Size.CiteIn(context.Edition));

    private Finding Missing(PlacedLoad load, LoadRating.InHorsepower motor, Citation table) => new(
        Name,
        Severity,
        [load.Circuit.Space],
        $"{RuleWords.Place(load.Circuit)} has a motor of {motor.Output}, above the end of {table.Section}: "
        + "it counts for nothing in every figure.",
        table,
        Advice);
}
