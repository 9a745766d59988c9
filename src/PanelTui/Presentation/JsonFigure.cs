using System.Text.Json;

namespace PanelTui.Presentation;

/// <summary>A figure as a JSON number: twelve digits, which no meter reads, and no tail of a quotient behind them.</summary>
internal static class JsonFigure
{
    private const int Digits = 12;

    extension(Utf8JsonWriter json)
    {
        public void WriteFigure(string name, decimal value) => json.WriteNumber(name, ToDigits(value));

        /// <summary>Null where it is not worked out.</summary>
        public void WriteFigure(string name, decimal? value)
        {
            if (value is { } known) json.WriteFigure(name, known);
            else json.WriteNull(name);
        }
    }

    /// <summary>Rounded, and without the zeros behind the last digit; whole digits stay, however many.</summary>
    private static decimal ToDigits(decimal value)
    {
        var decimals = Digits;
        for (var size = Math.Abs(value); size >= 1 && decimals > 0; size /= 10) decimals--;
        return Math.Round(value, decimals, MidpointRounding.AwayFromZero) / 1.0000000000000000000000000000m;
    }
}
