using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Editing;

/// <summary>One key of the file, with those that must come with it; no text clears it.</summary>
internal sealed class FieldForm : Form
{
    private readonly ImmutableArray<YamlPath> _paths;

    /// <param name="session">The open file.</param>
    /// <param name="path">The key.</param>
    /// <param name="begun">What was typed on its row, in the place of its value; nothing to begin with the value.</param>
    public FieldForm(Session session, YamlPath path, string? begun = null)
    {
        _paths = FieldGroup.Of(session.Now, path);
        Fields = [.. _paths.Select(one => FieldEntry.Of(session, one, 0, _paths.Length > 1 ? Label(one, path) : null) with { Begun = one.Equals(path) ? begun : null })];
    }

    public override ImmutableArray<FormField> Fields { get; }

    public override bool StepByStep => true;

    public override string? OnwardByTab => _paths.Length == 1 ? "done, next row" : null;

    public override FormRefusal? WhyNot(int field, string text) => FieldEntry.WhyNot(field, FieldBook.At(_paths[field])!, text);

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        if (Unchanged(texts)) return null;
        if (session.Do(snapshot => Change(snapshot, texts)) is not { } reason) return null;
        return Enumerable.Range(0, _paths.Length).Select(at => WhyNot(at, texts[at])).FirstOrDefault(refusal => refusal is not null)
            ?? new FormRefusal(_paths.Length == 1 ? 0 : Math.Max(0, texts.IndexOf("")), reason);
    }

    public override void Preview(Session session, ImmutableArray<string> texts)
    {
        if (Unchanged(texts)) session.EndPreview();
        else session.Try(snapshot => Change(snapshot, texts));
    }

    /// <summary>The bare key beside others of its section; of another section with its name.</summary>
    private static string Label(YamlPath one, YamlPath path)
    {
        var key = FieldBook.At(one)!.Key.Replace('_', ' ');
        var words = one.Parent.Equals(path.Parent) ? key : $"{one.Parent.Last} {key}";
        return char.ToUpperInvariant(words[0]) + words[1..];
    }

    private bool Unchanged(ImmutableArray<string> texts) => texts.Zip(Fields).All(pair => pair.First.Trim() == pair.Second.Value);

    private Intended Change(Snapshot snapshot, ImmutableArray<string> texts)
    {
        if (_paths.Length == 1) return SetField.In(snapshot, _paths[0], texts[0]);
        var section = FieldBook.At(_paths[^1].Parent)?.Title ?? FieldBook.At(_paths[^1])!.Title;
        return SetField.In(snapshot, $"Set {section}", [.. _paths.Zip(texts)]);
    }
}
