using System.Collections.Immutable;

namespace PanelTui.Sheets;

/// <summary>A line of the parts list.</summary>
internal sealed record Part(string Kind, string Name, decimal Quantity, string Unit = "pieces", string Remark = "")
{
    private const decimal MetresPerFoot = 0.3048m;

    public ImmutableArray<Cell> Row =>
        [Kind, Name, Cell.Of(Quantity), Unit, Unit == "ft" ? Cell.Of(Quantity * MetresPerFoot, 1) : "", Remark];
}
