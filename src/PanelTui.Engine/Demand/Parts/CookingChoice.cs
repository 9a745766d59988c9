using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Parts;

/// <summary>Which column each cooking appliance goes through: the permitted way that comes to least.</summary>
/// <remarks>
/// Note 3 lets appliances up to 8 3/4 kW use columns A and B, each counted on its own; without it they are in column C with the
/// others, as long as none of those is above 12 kW.
/// </remarks>
internal sealed record CookingChoice(ImmutableArray<CookingSet> Sets)
{
    private static readonly ImmutableArray<ImmutableArray<CookingColumn>> WaysIntoC =
        [[], [CookingColumn.A], [CookingColumn.B], [CookingColumn.A, CookingColumn.B]];

    public VoltAmperes Demand => Sets.Aggregate(VoltAmperes.Zero, (sum, set) => sum + set.Demand);

    public static CookingChoice Of(ImmutableArray<ApplianceUnits> units)
    {
        var ways = units.Any(unit => Column(unit) == CookingColumn.C && unit.Each > CookingFactors.ColumnCUpTo)
            ? WaysIntoC[..1]
            : WaysIntoC;
        return ways.Select(inC => Of(units, inC)).MinBy(choice => choice.Demand)!;
    }

    /// <summary>The set that a rating is in.</summary>
    public CookingSet SetOf(VoltAmperes rating) =>
        Sets.First(set => set.Units.Any(unit => unit.Each == rating));

    private static CookingChoice Of(ImmutableArray<ApplianceUnits> units, ImmutableArray<CookingColumn> inC) => new(
    [
        .. units.GroupBy(unit => inC.Contains(Column(unit)) ? CookingColumn.C : Column(unit))
            .OrderBy(group => group.Key)
            .Select(group => new CookingSet(group.Key, [.. group])),
    ]);

    private static CookingColumn Column(ApplianceUnits unit) => CookingFactors.ColumnOf(unit.Each);
}
