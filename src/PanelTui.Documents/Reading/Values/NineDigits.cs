using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// A converted figure without the noise of binary fractions: nine significant digits, so that 3.048 m is 10 ft.
/// </summary>
internal static class NineDigits
{
    public static decimal Of(double value) =>
        decimal.Parse(
            value.ToString("G9", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
}
