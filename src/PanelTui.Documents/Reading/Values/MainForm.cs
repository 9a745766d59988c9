using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The main breaker's rating, or `lugs`.</summary>
internal sealed class MainForm() : ValueForm<MainDevice>("a breaker rating such as 60 A, or lugs")
{
    private const string Lugs = "lugs";

    public override Outcome<MainDevice> Read(string text) =>
        text.Trim().Equals(Lugs, StringComparison.OrdinalIgnoreCase)
            ? Outcome.Of(MainDevice.Lugs)
            : QuantityReader.Read(text, [Measures.Handle], "60 A, or lugs for main lugs only")
                .Then(quantity => MainDevice.BreakerOf(new Amperes(quantity.Value)));
}
