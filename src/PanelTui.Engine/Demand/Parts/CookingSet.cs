using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Cooking appliances that go through one column of Table 220.55 together.</summary>
internal sealed record CookingSet(CookingColumn Column, ImmutableArray<ApplianceUnits> Units)
{
    private const decimal Kilowatt = 1_000;

    public long Count => Units.Sum(unit => unit.Count);

    /// <summary>Columns A and B, and what the table does not hold, have a factor; column C has kilowatts.</summary>
    public Percent? Factor => Column switch
    {
        CookingColumn.C => null,
        CookingColumn.A => CookingFactors.A(Count),
        CookingColumn.B => CookingFactors.B(Count),
        CookingColumn.BelowTable or CookingColumn.BeyondTable => Percent.Whole,
        _ => throw Unnamed.Of(Column),
    };

    public VoltAmperes Demand => Factor is { } factor
        ? Units.Aggregate(VoltAmperes.Zero, (sum, unit) => sum + unit.Total) * factor
        : CookingFactors.C(Count) * (1 + (Increase.Value / 100));

    /// <summary>Notes 1 and 2: 5 % for each kW, half a kW rounded up, by which their mean is above 12 kW.</summary>
    /// <remarks>For the mean an appliance below 12 kW counts as 12 kW.</remarks>
    public Percent Increase
    {
        get
        {
            var most = CookingFactors.ColumnCUpTo;
            var above = Units.Sum(unit => (VoltAmperes.Max(unit.Each, most) - most).Value * unit.Count);
            var mean = Count == 0 ? 0 : above / Count;
            return new Percent(
                CookingFactors.EachKilowattAbove.Value * Math.Round(mean / Kilowatt, MidpointRounding.AwayFromZero));
        }
    }

    public string Words => Column switch
    {
        CookingColumn.BelowTable => "Cooking of 1750 W or less",
        CookingColumn.BeyondTable => "Cooking above 27 kW",
        CookingColumn.C when Increase > Percent.Zero =>
            $"Cooking, column C for {Count}, {CookingFactors.C(Count)} + {Increase}",
        CookingColumn.A => $"Cooking, column A for {Count}",
        CookingColumn.B => $"Cooking, column B for {Count}",
        CookingColumn.C => $"Cooking, column C for {Count}",
        _ => throw Unnamed.Of(Column),
    };

    public Citation CiteIn(CodeEdition edition) => CookingFactors.SectionFor(Column, Count).In(edition);
}
