using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>Reads the keys of one mapping by the field book, and reports what is missing, unknown or wrong.</summary>
internal sealed class MappingReader
{
    private readonly Dictionary<string, EffectiveEntry> _entries = new(StringComparer.Ordinal);
    private readonly DiagnosticList _diagnostics;
    private readonly string _subject;

    /// <param name="node">A mapping, aliases resolved.</param>
    /// <param name="owner">Its place in the field book, such as `circuits[]`.</param>
    /// <param name="subject">What it is called in a sentence, such as `this circuit`.</param>
    /// <param name="diagnostics">Where what is wrong is reported.</param>
    public MappingReader(YamlNode node, string owner, string subject, DiagnosticList diagnostics)
    {
        Node = node;
        _subject = subject;
        _diagnostics = diagnostics;
        foreach (var entry in Aliases.EntriesOf(node)) _entries.TryAdd(entry.Key, entry);
        UnknownKeys.Note(_entries.Values, FieldBook.Of(owner), subject, diagnostics);
    }

    public YamlNode Node { get; }

    /// <summary>The first line of the mapping: what is wrong with all of it is shown there.</summary>
    public TextSpan Head => new(Node.Span.Start, 0);

    public DiagnosticList Diagnostics => _diagnostics;

    public bool Has(Field field) => _entries.ContainsKey(field.Key);

    /// <summary>Where the field's value stands, or the head of the mapping.</summary>
    public TextSpan SpanOf(Field field) => ValueOf(field)?.Span ?? Head;

    /// <summary>The value's node; null where the key is missing or has nothing behind it.</summary>
    public YamlNode? ValueOf(Field field)
    {
        if (!_entries.TryGetValue(field.Key, out var entry)) return null;
        if (!IsNull(entry.Value)) return entry.Value;
        if (field.IsRequired)
            _diagnostics.Error(
                DiagnosticCodes.MissingKey, entry.Pair.Key.Span, $"{field.Key} has no value; {Wanted(field)}");
        else if (field.Shape is FieldShape.Value)
            _diagnostics.Note(
                DiagnosticCodes.EmptyValue, entry.Pair.Key.Span, $"{field.Key} has no value and counts as not written");
        return null;
    }

    /// <summary>The field's value; nothing where it is missing or wrong, and the wrong is reported.</summary>
    public T? Value<T>(ValueField<T> field)
        where T : struct =>
        Outcome(field) is { Succeeded: true, Value: var value } ? value : null;

    /// <summary>As <see cref="Value"/>, for values that are objects.</summary>
    public T? Object<T>(ValueField<T> field)
        where T : class =>
        Outcome(field) is { Succeeded: true, Value: var value } ? value : null;

    /// <summary>
    /// As <see cref="Value"/>, but a missing key is an error, and the stand-in only keeps the reading going.
    /// </summary>
    public T Required<T>(ValueField<T> field, T standIn)
        where T : notnull
    {
        if (!Has(field)) Missing(field);
        return Outcome(field) is { Succeeded: true, Value: { } value } ? value : standIn;
    }

    public void Missing(Field field) =>
        _diagnostics.Error(DiagnosticCodes.MissingKey, Head, $"{_subject} has no {field.Key}; {Wanted(field)}");

    /// <summary>The field's values with their nodes; those that are wrong are reported and left out.</summary>
    public ImmutableArray<(T Value, YamlNode Node)> List<T>(ListField<T> field)
        where T : notnull
    {
        var values = ImmutableArray.CreateBuilder<(T, YamlNode)>();
        foreach (var node in Entries(field))
        {
            if (!Is(node.IsScalar, node, $"an entry of {field.Key}", "one value")) continue;
            var outcome = field.ReadOne(node.Value);
            if (outcome.Succeeded) values.Add((outcome.Value, node));
            else Wrong(field, node.Span, outcome.Problem);
        }

        return values.DrainToImmutable();
    }

    /// <summary>The mapping below a key, ready to be read; null where it is missing or something else.</summary>
    public MappingReader? Section(SectionField field, string subject) =>
        ValueOf(field) is { } node && Is(node.IsMapping, node, field.Key, field.Expected)
            ? new(node, field.Path, subject, _diagnostics)
            : null;

    /// <summary>As <see cref="Section"/>, but a missing key is an error.</summary>
    public MappingReader? RequiredSection(SectionField field, string subject)
    {
        if (!Has(field)) Missing(field);
        return Section(field, subject);
    }

    /// <summary>The mappings of a list below a key, with their places in it from 0.</summary>
    public IEnumerable<(int Index, MappingReader Entry)> Sections(SectionField field, string subject, int most)
    {
        if (ValueOf(field) is not { } list || !Is(list.IsSequence, list, field.Key, "a list, each entry after a dash"))
            yield break;
        var entries = Aliases.ItemsOf(list);
        if (entries.Length > most) TooMany(field, entries.Length, most, entries[most].Span);
        for (var index = 0; index < Math.Min(entries.Length, most); index++)
        {
            if (Is(entries[index].IsMapping, entries[index], $"an entry of {field.Key}", "a mapping of keys to values"))
                yield return (index, new(entries[index], $"{field.Path}[]", subject, _diagnostics));
        }
    }

    public void Wrong(Field field, TextSpan span, string problem) =>
        _diagnostics.Error(DiagnosticCodes.BadValue, span, $"{field.Key} {problem}");

    private void TooMany(Field field, int count, int most, TextSpan span) =>
        _diagnostics.Error(DiagnosticCodes.TooMany, span, $"{field.Key} has {count} entries; the most is {most}");

    private Outcome<T>? Outcome<T>(ValueField<T> field)
        where T : notnull
    {
        if (ValueOf(field) is not { } node || !Is(node.IsScalar, node, field.Key, field.Expected)) return null;
        var outcome = field.Read(node.Value);
        if (!outcome.Succeeded) Wrong(field, node.Span, outcome.Problem);
        else if (field.IsFreeText) ControlCharacters.Note(field, node, _diagnostics);
        return outcome;
    }

    private IEnumerable<YamlNode> Entries(Field field)
    {
        if (ValueOf(field) is not { } node || !Is(!node.IsMapping, node, field.Key, $"a list, e.g. {field.Example}"))
            return [];
        return node.IsSequence ? Aliases.ItemsOf(node).Where(item => !IsNull(item)) : [node];
    }

    private bool Is(bool right, YamlNode node, string subject, string expected)
    {
        if (right) return true;
        _diagnostics.Error(
            DiagnosticCodes.WrongShape,
            new(node.Span.Start, 0),
            $"{subject} is {Shapes.Name(node)}; it must be {expected}");
        return false;
    }

    private static string Wanted(Field field) =>
        field.Example.Length > 0 ? $"give one, e.g. {field.Key}: {field.Example}" : $"give {field.Expected}";

    private static bool IsNull(YamlNode node) =>
        node.IsPlain && (node.Value is "" or "~" or "null" or "Null" or "NULL");
}
