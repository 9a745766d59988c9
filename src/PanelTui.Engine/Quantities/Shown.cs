using System.Globalization;

namespace PanelTui.Engine.Quantities;

/// <summary>How a figure is written: always with a point, never with a separator, whatever the user's locale.</summary>
public static class Shown
{
    private const int LastDigits = 9;

    /// <summary>All the digits there are, no trailing zeros: `2.5 kA` is held as 2500 and written `2500 A`.</summary>
    public static string Exactly(decimal value, string unit = "")
    {
        var number = value.ToString("0.############################", CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    /// <summary>As it was stated, and what a division left of endless digits to a place that can be read: `33333 VA`, `16.67 A`.</summary>
    /// <remarks>What has four decimals or fewer is written exactly.</remarks>
    public static string Plainly(decimal value, string unit = "")
    {
        var size = Math.Abs(value);
        var places = size switch
        {
            >= 1000 => 0,
            >= 100 => 1,
            >= 10 => 2,
            >= 1 => 3,
            _ => 4,
        };
        return Exactly(decimal.Round(value, 4) == value ? value : Math.Round(value, places, MidpointRounding.AwayFromZero), unit);
    }

    /// <summary>Rounded down to so many decimals: for what is left of something, such as hours, of which less is promised than there is.</summary>
    /// <remarks>What sums and quotients leave in the last digits takes nothing away: 2.7999999999999 is 2.8.</remarks>
    public static string RoundedDown(decimal value, int decimals, string unit = "") =>
        Rounded(Math.Round(Math.Round(value, LastDigits), decimals, MidpointRounding.ToNegativeInfinity), decimals, unit);

    /// <summary>Rounded half up to so many decimals, for showing only.</summary>
    public static string Rounded(decimal value, int decimals, string unit = "")
    {
        var round = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var number = round.ToString($"F{decimals}", CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }
}
