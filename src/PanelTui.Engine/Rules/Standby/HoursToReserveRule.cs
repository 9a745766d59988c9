using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>How long the battery carries the scenario that it carries for the shortest time.</summary>
public sealed class HoursToReserveRule : CodeRule
{
    public override string Name => "hours-to-reserve";

    public override Severity Severity => Severity.Note;

    public override string Summary => "It is known how long the battery carries what is meant to run.";

    public override string Why => "Once the reserve is reached the source shuts down, often at night and by itself.";

    public override string Advice =>
        "Compare with the outages you plan for: a reserve of 25 % is an everyday one, 50 % one before a storm; "
        + "paneltui run shows sun and charging.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var shortest = context.Scenarios.Where(run => run.ToReserve is not null).MinBy(run => run.ToReserve!.Value.Value);
        if (shortest is { ToReserve: { } hours } && context.Schedule.Source?.Battery is { } battery)
        {
            yield return Found(
                context,
                $"{shortest.Name} takes {Shown.Rounded(shortest.Average.Value, 0, "W")} on the average: from full to the reserve of "
                + $"{battery.Reserve} in {Shown.RoundedDown(hours.Value, 1, "h")} with nothing that charges.");
        }
    }
}
