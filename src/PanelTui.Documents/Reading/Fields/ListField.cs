using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>A key with a list of values, typed by hand as `a, b`.</summary>
internal sealed class ListField<T>(string path, ValueForm<T> form, string example, string help) : Field(path, help)
    where T : notnull
{
    public override FieldShape Shape => FieldShape.List;

    public override string Expected => $"a list, each {form.Words}";

    public override ImmutableArray<string> Allowed => form.Allowed;

    public override string Example { get; } = example;

    public override bool IsFreeText => form.IsFreeText;

    public override ImmutableArray<string> Offered => form.Offered;

    public override string Unit => form.Unit;

    public override string Written(string text) => string.Join(", ", Typed.List(text).Select(form.Written));

    /// <summary>Of the first entry that cannot stand, with the others around it.</summary>
    public override ImmutableArray<string> Meant(string text)
    {
        var entries = Typed.List(Written(text));
        var wrong = entries.TakeWhile(entry => form.Read(entry).Succeeded).Count();
        return wrong == entries.Length
            ? []
            : [.. form.Meant(entries[wrong]).Select(meant => string.Join(", ", entries.SetItem(wrong, meant)))];
    }

    public Outcome<T> ReadOne(string text) => text.Contains(',', StringComparison.Ordinal)
        ? Outcome.Refused<T>($"is {Quoted.Of(text)}; put a list in brackets, e.g. {Example}")
        : LookAlikes.Read(text, form.Read);

    public override string? WhyNot(string text) => Typed.List(text)
        .Select(one => ReadOne(one).Problem)
        .FirstOrDefault(problem => problem is not null) is { } first ? $"{Key} {first}" : null;
}
