using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Gives a key of the file the value that a person typed; no text clears the key.</summary>
public static class SetField
{
    public static Intended In(Snapshot snapshot, YamlPath path, string text) =>
        In(snapshot, Title(snapshot, path, text), (path, text));

    /// <summary>Several keys as one change, for those that make sense only together.</summary>
    public static Intended In(Snapshot snapshot, string title, params ReadOnlySpan<(YamlPath Path, string Text)> values)
    {
        var edits = new List<Func<YamlTree, TextChange>>();
        foreach (var (path, text) in values)
        {
            if (WhyNot(path, text) is { } reason) return Intended.Refused(reason);
            edits.Add(tree => Edit(tree, path, text.Trim()));
        }

        return AllAtOnce(snapshot, title, values) ?? Attempt.Of(snapshot, title, [.. edits]);
    }

    /// <summary>A value of each of many circuits takes as long as one, where each is a single value that is there or joins others.</summary>
    private static Intended? AllAtOnce(Snapshot snapshot, string title, ReadOnlySpan<(YamlPath Path, string Text)> values)
    {
        if (values.Length < 2 || snapshot.Tree is not { } tree) return null;
        var scalars = new List<(YamlPath Path, NewScalar Value, string? After)>();
        foreach (var (path, text) in values)
        {
            if (string.IsNullOrWhiteSpace(text) || path.Last.Key is null || path.Parent.Find(tree) is not { IsMapping: true, Pairs.IsEmpty: false } map) return null;
            if (path.Find(tree) is { IsScalar: false } || Typing.Node(FieldBook.At(path)!, text.Trim()) is not NewScalar value) return null;
            scalars.Add((path, value, NewKey.After(map, path)));
        }

        var done = Attempt.Of(snapshot, title, now => YamlEditor.SetScalars(now, scalars) ?? throw new CannotEdit("not at once"));
        return done.IsPossible ? done : null;
    }

    private static string? WhyNot(YamlPath path, string text)
    {
        if (FieldBook.At(path) is not { } field) return $"the format has no key {path}";
        if (!string.IsNullOrWhiteSpace(text)) return field.WhyNot(field.Written(text));
        return field.IsRequired ? $"{field.Key} cannot be left out; write {field.Expected}" : null;
    }

    private static string Title(Snapshot snapshot, YamlPath path, string text)
    {
        var key = path.IsRoot ? "the file" : path.Last.ToString().Replace('_', ' ');
        var owner = Called.Owner(snapshot, path);
        return string.IsNullOrWhiteSpace(text) ? $"Clear {key}{owner}" : $"Set {key}{owner} to {FieldBook.At(path)?.Written(text) ?? text.Trim()}";
    }

    private static TextChange Edit(YamlTree tree, YamlPath path, string text)
    {
        var field = FieldBook.At(path)!;
        if (text.Length == 0) return ClearKey.Of(tree, path);
        return path.Find(tree) switch
        {
            null => NewKey.Of(tree, path, Typing.Node(field, text)),
            { IsSequence: true } list when field.Shape == FieldShape.List =>
                ListValue.Of(tree, path, list, field, text),
            { IsScalar: true } when Typing.Node(field, text) is NewScalar scalar =>
                YamlEditor.SetScalar(tree, path, scalar),
            _ => Replace.Of(tree, path, Typing.Node(field, text)),
        };
    }
}
