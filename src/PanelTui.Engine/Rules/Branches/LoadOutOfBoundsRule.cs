using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>A load beyond all bounds is counted at the bound, which nobody may overlook.</summary>
public sealed class LoadOutOfBoundsRule : CodeRule
{
    public override string Name => "load-out-of-bounds";

    public override Severity Severity => Severity.Error;

    public override string Summary => "No load is larger than any panel could feed.";

    public override string Why =>
        "A figure that is cut down is not the load that is there; most often a unit or a count is wrong.";

    public override string Advice => "Check the unit of its rating, its power factor and its count.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from load in context.Connected.Loads
        where load.Size.IsAtBound || load.RunningWatts >= new Watts(LoadSize.Most.Value)
        select Found(
            context,
            [load.Circuit.Space],
            $"{RuleWords.Place(load.Circuit)} has a load that comes to {LoadSize.Most} or more; it counts as that much.");
}
