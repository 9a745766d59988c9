using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>One quantity of one measure, such as `20 A`.</summary>
/// <param name="measure">What may stand here.</param>
/// <param name="example">A good value, for sentences.</param>
/// <param name="make">From the base unit of the measure.</param>
/// <param name="offered">The usual values, to choose from.</param>
internal sealed class QuantityForm<T>(Measure measure, string example, Func<decimal, T> make, ImmutableArray<string> offered = default)
    : ValueForm<T>($"{measure.Name} in {measure.Symbols}")
    where T : notnull
{
    public override Outcome<T> Read(string text) =>
        QuantityReader.Read(text, [measure], example).Then(quantity => make(quantity.Value));

    public override string Unit => measure.Symbols;

    public override ImmutableArray<string> Offered { get; } = offered.IsDefault ? [] : offered;

    public override string Written(string text) => TypedQuantity.Written(text, [measure]);

    public override ImmutableArray<string> Meant(string text) => TypedQuantity.Meant(text, [measure]);
}
