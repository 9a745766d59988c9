using System.Globalization;

namespace PanelTui.Engine.Quantities;

/// <summary>How a figure is written: always with a point, never with a separator, whatever the user's locale.</summary>
public static class Shown
{
    /// <summary>All the digits there are, no trailing zeros: `2.5 kA` is held as 2500 and written `2500 A`.</summary>
    public static string Exactly(decimal value, string unit = "")
    {
        var number = value.ToString("0.############################", CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }

    /// <summary>Rounded half up to so many decimals, for showing only.</summary>
    public static string Rounded(decimal value, int decimals, string unit = "")
    {
        var round = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        var number = round.ToString($"F{decimals}", CultureInfo.InvariantCulture);
        return unit.Length == 0 ? number : $"{number} {unit}";
    }
}
