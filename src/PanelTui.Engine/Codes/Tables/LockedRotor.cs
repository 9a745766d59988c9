using System.Collections.Immutable;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One code letter: what a motor draws with its rotor held, in kVA for each hp of its output.</summary>
/// <remarks>The last letter has no upper end.</remarks>
public readonly record struct LockedRotorRow(char Letter, decimal Least, decimal? Most)
{
    /// <summary>What a start is reckoned with: the upper end, and of the last letter the lower one.</summary>
    public decimal Reckoned => Most ?? Least;
}

/// <summary>Locked-rotor code letters on motor nameplates.</summary>
/// <remarks>Seen in public copies of the table; one prints the upper end of B as 3.55, which the row of C rules out.</remarks>
public static class LockedRotor
{
    public static readonly CodeSection Section = Nec.Section("Table 430.7(B)");

    public static readonly ImmutableArray<LockedRotorRow> Rows =
    [
        new('A', 0, 3.14m),
        new('B', 3.15m, 3.54m),
        new('C', 3.55m, 3.99m),
        new('D', 4.0m, 4.49m),
        new('E', 4.5m, 4.99m),
        new('F', 5.0m, 5.59m),
        new('G', 5.6m, 6.29m),
        new('H', 6.3m, 7.09m),
        new('J', 7.1m, 7.99m),
        new('K', 8.0m, 8.99m),
        new('L', 9.0m, 9.99m),
        new('M', 10.0m, 11.19m),
        new('N', 11.2m, 12.49m),
        new('P', 12.5m, 13.99m),
        new('R', 14.0m, 15.99m),
        new('S', 16.0m, 17.99m),
        new('T', 18.0m, 19.99m),
        new('U', 20.0m, 22.39m),
        new('V', 22.4m, null),
    ];

    /// <summary>Nothing for a letter that the table has not.</summary>
    public static LockedRotorRow? Find(char letter)
    {
        foreach (var row in Rows)
        {
            if (row.Letter == letter)
                return row;
        }
        return null;
    }
}
