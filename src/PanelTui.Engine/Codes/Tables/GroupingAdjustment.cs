using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row: up to so many current-carrying conductors together, this share of the ampacity.</summary>
public sealed record GroupingRow(int UpTo, Percent Share);

/// <summary>What more than three current-carrying conductors in one raceway or cable leave of the ampacity of each.</summary>
public static class GroupingAdjustment
{
    public static readonly CodeSection Section = Nec.Section((2017, "Table 310.15(B)(3)(a)"), (2020, "Table 310.15(C)(1)"));

    /// <summary>In the printed order; the first row is what the ampacities are printed for.</summary>
    public static readonly ImmutableArray<GroupingRow> Rows =
    [
        new(3, 100.Pct),
        new(6, 80.Pct),
        new(9, 70.Pct),
        new(20, 50.Pct),
        new(30, 45.Pct),
        new(40, 40.Pct),
        new(int.MaxValue, 35.Pct),
    ];

    public static Percent Find(int conductors)
    {
        foreach (var row in Rows)
        {
            if (conductors <= row.UpTo)
                return row.Share;
        }
        return Rows[^1].Share;
    }
}
