using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>Breakers are made in standard ratings: branch breakers, the main, and the feeder's device.</summary>
public sealed class RatingNotStandardRule : CodeRule
{
    public override string Name => "rating-not-standard";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A breaker's rating is one of the standard ampere ratings.";

    public override string Why =>
        "A rating that is not made is a slip of the pen, and whatever is judged by it is judged wrongly.";

    public override string Advice => "Read the rating on the handle again.";

    public override CodeSection? Section => StandardRatings.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from device in Devices(context)
        where !StandardRatings.Has(device.Rating, context.Edition)
        select Found(
            context,
            device.Spaces,
            $"{device.Called} is {device.Rating}, which is no standard rating; {Neighbours(device.Rating, context.Edition)}.");

    private static IEnumerable<(string Called, Amperes Rating, SpaceNumber[] Spaces)> Devices(RuleContext context)
    {
        if (context.Panel.Main?.Rating is { } main)
            yield return ("The main breaker", main, []);
        if (context.Schedule.Feeder?.Ocpd is { } feeder)
            yield return ("The feeder's overcurrent device", feeder, []);
        foreach (var circuit in context.Circuits)
            yield return ($"The breaker of {RuleWords.Place(circuit)}", circuit.Breaker.Rating, [circuit.Space]);
    }

    private static string Neighbours(Amperes rating, CodeEdition edition) =>
        (StandardRatings.NextDown(rating, edition), StandardRatings.NextUp(rating, edition)) switch
        {
            ({ } below, { } above) => $"the nearest are {below} and {above}",
            ({ } below, null) => $"the largest is {below}",
            (null, var above) => $"the smallest is {above}",
        };
}
