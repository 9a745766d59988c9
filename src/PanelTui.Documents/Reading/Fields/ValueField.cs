using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>A key with one value.</summary>
internal sealed class ValueField<T>(string path, ValueForm<T> form, string example, string help) : Field(path, help)
    where T : notnull
{
    public override FieldShape Shape => FieldShape.Value;

    public override string Expected => form.Words;

    public override ImmutableArray<string> Allowed => form.Allowed;

    public override string Example { get; } = example;

    public override bool IsFreeText => form.IsFreeText;

    public override ImmutableArray<string> Offered => form.Offered;

    public override string Unit => form.Unit;

    public override string Written(string text) => form.Written(text);

    public override ImmutableArray<string> Meant(string text) => form.Meant(text);

    public Outcome<T> Read(string text) => LookAlikes.Read(text, form.Read);

    public override bool Same(string one, string other) =>
        base.Same(one, other)
        || (Read(one) is { Succeeded: true, Value: var a } && Read(other) is { Succeeded: true, Value: var b } && a.Equals(b));

    public override string? WhyNot(string text) =>
        Read(text) is { Succeeded: false, Problem: var problem } ? $"{Key} {problem}" : null;
}
