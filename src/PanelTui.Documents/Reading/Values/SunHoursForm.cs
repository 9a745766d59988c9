using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>Hours of full sun in a day: `4.2`, or `4.2 h`; the key says the unit already.</summary>
internal sealed class SunHoursForm() : ValueForm<Hours>("hours of full sun in a day, 0 to 24")
{
    private const string Example = "4.2 h";

    public override string Unit => "h";

    public override Outcome<Hours> Read(string text)
    {
        var withUnit = text.Length > 0 && char.IsAsciiDigit(text.TrimEnd()[^1]) ? $"{text} h" : text;
        return QuantityReader.Read(withUnit, [Measures.SunHours], Example).Then(quantity => new Hours(quantity.Value));
    }
}
