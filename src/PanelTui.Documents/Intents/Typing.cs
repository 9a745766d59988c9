using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Turns what a person typed into what is written in the file.</summary>
internal static class Typing
{
    /// <summary>A single value, spelt as the format spells it.</summary>
    public static NewScalar Scalar(Field field, string text) =>
        new(field.Written(text), field.IsFreeText ? ScalarKind.Text : ScalarKind.Plain);

    /// <summary>A value or a list in brackets; one entry of a list that needs no brackets stands alone.</summary>
    public static NewNode Node(Field field, string text) => field.Shape == FieldShape.List
        ? List(field, Typed.List(text))
        : Scalar(field, text);

    /// <summary>
    /// A mapping of the typed values in the order of the format, or the sentence that refuses one of them.
    /// </summary>
    public static (ImmutableArray<NewEntry> Entries, string? Refusal) Entries(
        string owner, ImmutableArray<TypedValue> values)
    {
        var given = values.Where(value => !string.IsNullOrWhiteSpace(value.Text)).ToImmutableArray();
        var known = FieldBook.Of(owner);
        var stranger = given.Select(value => value.Key).FirstOrDefault(key => known.All(field => field.Key != key));
        if (stranger is not null) return ([], $"the format has no key {stranger} here");
        ImmutableArray<(Field Field, string Text)> pairs =
            [.. known.Join(given, field => field.Key, value => value.Key, (field, value) => (field, value.Text))];
        var entries = pairs.Select(pair => new NewEntry(pair.Field.Key, Node(pair.Field, pair.Text)));
        return ([.. entries], FirstRefusal(pairs));
    }

    private static string? FirstRefusal(IEnumerable<(Field Field, string Text)> pairs) =>
        pairs.Select(pair => pair.Field.WhyNot(pair.Field.Written(pair.Text))).FirstOrDefault(reason => reason is not null);

    private static NewNode List(Field field, ImmutableArray<string> entries) => entries is ["all"]
        ? Scalar(field, entries[0])
        : new NewSequence([.. entries.Select(entry => (NewNode)Scalar(field, entry))], CollectionStyle.Flow);
}
