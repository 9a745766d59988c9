using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Demand factors for household clothes dryers, by how many there are.</summary>
public static class DryerFactors
{
    /// <summary>Each counts its nameplate, and no less than <see cref="LeastEach"/>.</summary>
    public static readonly CodeSection EachSection = Nec.Section("220.54");

    public static readonly VoltAmperes LeastEach = 5_000.VA;

    private static readonly CodeSection Seen = Nec.Section("Table 220.54");

    private static readonly CodeSection Remembered = Nec.FromMemory("Table 220.54");

    /// <summary>One to eleven, in the printed order.</summary>
    private static readonly Percent[] Rows =
        [100.Pct, 100.Pct, 100.Pct, 100.Pct, 85.Pct, 75.Pct, 65.Pct, 60.Pct, 55.Pct, 50.Pct, 47.Pct];

    /// <summary>From twelve on the table prints formulas.</summary>
    public static Percent For(long dryers) => dryers switch
    {
        < 1 => Percent.Whole,
        <= 11 => Rows[(int)dryers - 1],
        <= 23 => new Percent(47 - (dryers - 11)),
        <= 42 => new Percent(35 - (0.5m * (dryers - 23))),
        _ => 25.Pct,
    };

    /// <summary>The rows of 1 and of 9 to 23 dryers were seen; the others are from memory.</summary>
    public static CodeSection SectionFor(long dryers) => dryers is 1 or (>= 9 and <= 23) ? Seen : Remembered;
}
