using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>A peak of a few days says little about a year.</summary>
public sealed class MeasuredTooShortRule : CodeRule
{
    public override string Name => "measured-too-short";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A measured peak comes from a record of 30 days or more.";

    public override string Why =>
        "A few quiet days hide the load of a cold week or a busy season.";

    public override string Advice =>
        "Measure for longer, or take the highest demand of a year from the utility; heating or cooling must have run.";

    public override CodeSection? Section => MeasuredDemand.Section;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Demand is { Method: DemandMethodName.Measured, MeasuredDays: { } days }
            && days < MeasuredDemand.LeastDays)
        {
            yield return Found(
                context,
                $"The peak was measured over {Shown.Exactly(days, "days")}; the least is {MeasuredDemand.LeastDays} days.");
        }
    }
}
