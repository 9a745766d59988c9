using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Household clothes dryers, 220.54: no less than 5 kVA each, then a factor by how many there are.</summary>
internal static class Dryers
{
    public static IEnumerable<DemandLine> Lines(CountedLoads counted)
    {
        var dryers = counted.Kinds(LoadKind.Dryer);
        var between = dryers.Where(TwiceTheMost.IsBetweenTwo).ToImmutableArray();
        if (!TwiceTheMost.AppliesTo(counted.System, between))
            return OnTheirLegs(dryers, counted);
        return [OnThreeLegs(between, counted), .. OnTheirLegs([.. dryers.Where(load => !TwiceTheMost.IsBetweenTwo(load))], counted)];
    }

    private static IEnumerable<DemandLine> OnTheirLegs(ImmutableArray<PlacedLoad> dryers, CountedLoads counted)
    {
        if (dryers.Length == 0)
            yield break;
        var units = dryers.Sum(load => (long)load.Load.Count);
        var legs = LegSum.Of(counted.System, dryers.Select(AtLeast));
        var category = Category($"Clothes dryers, {units} of {Least}", dryers, units, counted);
        var line = DemandLine.Figure(category, legs * DryerFactors.For(units));
        yield return line with { IsHousehold = true, Label = Label(category.Label, units) };
    }

    private static DemandLine OnThreeLegs(ImmutableArray<PlacedLoad> dryers, CountedLoads counted)
    {
        var doubled = TwiceTheMost.Units(dryers, Demand);
        var units = doubled.Sum(unit => unit.Count);
        var category = Category($"Clothes dryers, twice the {units / 2} between two legs, {Least}", dryers, units, counted);
        return DemandLine.Figure(category, TwiceTheMost.Balanced(counted.System, Demand(doubled))) with
        {
            IsHousehold = true,
            Label = Label(category.Label, units),
        };
    }

    private static string Least => $"{DryerFactors.LeastEach} or more";

    private static string Label(string label, long units) =>
        DryerFactors.For(units) is var factor && factor == Percent.Whole ? label : $"{label}, {factor}";

    private static VoltAmperes Demand(ImmutableArray<ApplianceUnits> units) =>
        units.Aggregate(VoltAmperes.Zero, (sum, unit) => sum + (Each(unit.Each) * unit.Count))
        * DryerFactors.For(units.Sum(unit => unit.Count));

    private static LegLoads AtLeast(PlacedLoad load) =>
        load.Placement.Put(new VoltAmperes(Bounded.Product(Each(load.Size.Each).Value, load.Load.Count)));

    private static VoltAmperes Each(VoltAmperes nameplate) => VoltAmperes.Max(nameplate, DryerFactors.LeastEach);

    private static DemandCategory Category(
        string label, ImmutableArray<PlacedLoad> dryers, long units, CountedLoads counted) =>
        DemandCategory.Of(label, counted.System, dryers, Cite(dryers, units).In(counted.Edition));

    /// <summary>The floor has a section of its own: it is cited where it decides.</summary>
    private static CodeSection Cite(ImmutableArray<PlacedLoad> dryers, long units) =>
        units == 1 && dryers[0].Size.Each < DryerFactors.LeastEach
            ? DryerFactors.EachSection
            : DryerFactors.SectionFor(units);
}
