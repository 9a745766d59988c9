using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The main breaker's rating, or `lugs`.</summary>
internal sealed class MainForm() : ValueForm<MainDevice>("a breaker rating such as 60 A, or lugs")
{
    private const string Lugs = "lugs";

    public override string Unit => Measures.Handle.Symbols;

    public override ImmutableArray<string> Offered => [Lugs, .. Forms.Handle.Offered];

    public override string Written(string text) => text.Trim().ToUpperInvariant() is "LUGS" or "MLO"
        ? Lugs
        : TypedQuantity.Written(text, [Measures.Handle]);

    public override Outcome<MainDevice> Read(string text) =>
        text.Trim().Equals(Lugs, StringComparison.OrdinalIgnoreCase)
            ? Outcome.Of(MainDevice.Lugs)
            : QuantityReader.Read(text, [Measures.Handle], "60 A, or lugs for main lugs only")
                .Then(quantity => MainDevice.BreakerOf(new Amperes(quantity.Value)));
}
