using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Which part of the table of household cooking a rating belongs to.</summary>
public enum CookingColumn
{
    /// <summary>1 3/4 kW or less: not in the table, so its nameplate counts.</summary>
    BelowTable,

    /// <summary>Below 3 1/2 kW.</summary>
    A,

    /// <summary>3 1/2 kW to 8 3/4 kW.</summary>
    B,

    /// <summary>Above 8 3/4 kW to 27 kW.</summary>
    C,

    /// <summary>Above 27 kW: its nameplate counts.</summary>
    BeyondTable,
}

/// <summary>Demand of household cooking appliances, by how many there are and how large. kVA count as kW.</summary>
public static class CookingFactors
{
    private static readonly CodeSection Seen = Nec.Section("Table 220.55");

    private static readonly CodeSection Remembered = Nec.FromMemory("Table 220.55");

    /// <summary>Column C is printed for ranges up to here; larger ones add to it by Notes 1 and 2.</summary>
    public static readonly VoltAmperes ColumnCUpTo = 12_000.VA;

    /// <summary>For each kW, or major fraction of one, that ranges are above 12 kW.</summary>
    public static readonly Percent EachKilowattAbove = 5.Pct;

    /// <summary>Columns A and B in per cent and C in kW, for 1 to 25 appliances as printed.</summary>
    private static readonly (int A, int B, int C)[] Rows =
    [
        (80, 80, 8), (75, 65, 11), (70, 55, 14), (66, 50, 17), (62, 45, 20),
        (59, 43, 21), (56, 40, 22), (53, 36, 23), (51, 35, 24), (49, 34, 25),
        (47, 32, 26), (45, 32, 27), (43, 32, 28), (41, 32, 29), (40, 32, 30),
        (39, 28, 31), (38, 28, 32), (37, 28, 33), (36, 28, 34), (35, 28, 35),
        (34, 26, 36), (33, 26, 37), (32, 26, 38), (31, 26, 39), (30, 26, 40),
    ];

    /// <summary>Counts whose row was seen in a published source, each column on its own.</summary>
    private static readonly ImmutableArray<long> SeenA = [1, 3], SeenB = [1, 2, 3];

    private static readonly ImmutableArray<long> SeenC = [1, 2, 3, 8, 14, 15, 20, 24, 30];

    public static CookingColumn ColumnOf(VoltAmperes rating) => rating.Value switch
    {
        <= 1_750 => CookingColumn.BelowTable,
        < 3_500 => CookingColumn.A,
        <= 8_750 => CookingColumn.B,
        <= 27_000 => CookingColumn.C,
        _ => CookingColumn.BeyondTable,
    };

    public static Percent A(long appliances) => appliances <= Rows.Length ? new(Row(appliances).A) : 30.Pct;

    public static Percent B(long appliances) => appliances switch
    {
        <= 25 => new(Row(appliances).B),
        <= 30 => 24.Pct,
        <= 40 => 22.Pct,
        <= 50 => 20.Pct,
        <= 60 => 18.Pct,
        _ => 16.Pct,
    };

    /// <summary>26 to 40: 15 kW and 1 kW each; 41 and more: 25 kW and 3/4 kW each.</summary>
    public static VoltAmperes C(long appliances) => appliances switch
    {
        <= 25 => new(1_000 * Row(appliances).C),
        <= 40 => new(15_000 + (1_000 * appliances)),
        _ => new(25_000 + (750 * appliances)),
    };

    public static CodeSection SectionFor(CookingColumn column, long appliances) => column switch
    {
        CookingColumn.A => SeenOr(SeenA.Contains(appliances)),
        CookingColumn.B => SeenOr(SeenB.Contains(appliances)),
        CookingColumn.C => SeenOr(SeenC.Contains(appliances)),
        CookingColumn.BelowTable or CookingColumn.BeyondTable => Remembered,
        _ => throw Unnamed.Of(column),
    };

    private static CodeSection SeenOr(bool seen) => seen ? Seen : Remembered;

    private static (int A, int B, int C) Row(long appliances) => Rows[Math.Clamp((int)appliances, 1, Rows.Length) - 1];
}
