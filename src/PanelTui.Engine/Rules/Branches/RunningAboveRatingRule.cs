using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>A measurement above the nameplate: one of the two figures belongs to another load.</summary>
public sealed class RunningAboveRatingRule : CodeRule
{
    public override string Name => "running-above-rating";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "The measured running power of a load is no more than its rating.";

    public override string Why =>
        "Wires and breakers are sized by the rating, so a load that draws more is not protected as it is written "
        + "down.";

    public override string Advice => "Measure again and read the nameplate again: count and unit, too.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from load in context.Connected.Loads
        where load is { Load: { Running: not null, Rating: not null }, Size.IsKnown: true }
        let rated = load.Size.Each.At(load.Load.PowerFactor)
        where load.Load.Running > rated
        select Found(
            context,
            [load.Circuit.Space],
            $"{RuleWords.Place(load.Circuit)} has a load measured at {load.Load.Running}; {Rating(load, rated)}.");

    private static string Rating(PlacedLoad load, Watts rated) => load.Load.Rating is LoadRating.InWatts
        ? $"its rating is {load.Load.Rating}"
        : $"its rating of {load.Load.Rating} comes to {RuleWords.Beyond(rated, load.Load.Running!.Value)}";
}
