using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Household ranges, wall ovens and cooktops, by Table 220.55.</summary>
internal static class Cooking
{
    public static readonly ImmutableArray<LoadKind> Kinds = [LoadKind.Range, LoadKind.WallOven, LoadKind.Cooktop];

    public static IEnumerable<DemandLine> Lines(CountedLoads counted)
    {
        var cooking = counted.Kinds([.. Kinds]);
        var between = cooking.Where(TwiceTheMost.IsBetweenTwo).ToImmutableArray();
        return TwiceTheMost.AppliesTo(counted.System, between)
            ? [OnThreeLegs(between, counted), .. OnTheirLegs([.. cooking.Where(load => !TwiceTheMost.IsBetweenTwo(load))], counted)]
            : OnTheirLegs(cooking, counted);
    }

    private static IEnumerable<DemandLine> OnTheirLegs(ImmutableArray<PlacedLoad> cooking, CountedLoads counted)
    {
        var choice = CookingChoice.Of(ApplianceUnits.Of(cooking));
        return
            from set in choice.Sets
            let loads = cooking.Where(load => choice.SetOf(load.Size.Each) == set).ToImmutableArray()
            let category = DemandCategory.Of(set.Words, counted.System, loads, set.CiteIn(counted.Edition))
            let line = set.Factor is { } factor
                ? DemandLine.Of(category, factor)
                : DemandLine.Figure(category, set.Demand)
            select line with { IsHousehold = true };
    }

    /// <summary>One line for all of them: three halves of what twice the most between two legs comes to.</summary>
    private static DemandLine OnThreeLegs(ImmutableArray<PlacedLoad> cooking, CountedLoads counted)
    {
        var units = TwiceTheMost.Units(cooking, units => CookingChoice.Of(units).Demand);
        var choice = CookingChoice.Of(units);
        var words = string.Join("; ", choice.Sets.Select(set => set.Words));
        var category = DemandCategory.Of(
            $"{words}, being twice the most between two legs", counted.System, cooking,
            choice.Sets[^1].CiteIn(counted.Edition));
        return DemandLine.Figure(category, TwiceTheMost.Balanced(counted.System, choice.Demand)) with
        {
            IsHousehold = true,
        };
    }
}
