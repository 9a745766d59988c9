using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>A method that the schedule may name but that is not worked out yet must not pass in silence.</summary>
public sealed class DemandMethodNotYetRule : CodeRule
{
    public override string Name => "demand-method-not-yet";

    public override Severity Severity => Severity.Note;

    public override string Summary => "The calculated load is missing where its method is not worked out yet.";

    public override string Why => "A figure that is missing cannot be checked.";

    public override string Advice => "Work the demand out by hand, or name a method that is worked out.";

    public override CodeSection? Section { get; } = Nec.Section("Article 220");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Demand is null)
        {
            yield return Found(
                context,
                $"Demand method {context.Schedule.Demand.Method.Word} is not worked out yet: "
                + "demand, feeder and transfer ratings are left out.",
                $"Work them out by hand, or use one of {string.Join(", ", DemandBook.All.Select(method => method.Name.Word))}.");
        }
    }
}
