using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>Gives a single value another text, on its own line if it can.</summary>
internal static class ScalarChange
{
    /// <summary>What the tags of YAML's own types begin with, such as `!!binary`.</summary>
    private const string CoreTags = "tag:yaml.org,2002:";

    public static TextChange Of(YamlTree tree, YamlPath path, NewScalar value)
    {
        var draft = Draft.Of(tree);
        var node = draft.NodeAt(path);
        RefuseOthers(draft, path, node, value);
        var title = $"change {(path.IsRoot ? "value" : path.Last)}";
        if (Means(node, value)) return new(title, []);
        var intended = draft.With(path, old => value.Meaning with { Marks = old.Marks });
        var ways = ScalarCandidates.Of(value, node.Style, node.IsInFlow()).Select(written => Edits(draft, node, written));
        return draft.Commit(title, ways, intended);
    }

    /// <summary>The same as one of several edits that are made at once; nothing is replaced where the value means this already.</summary>
    /// <exception cref="CannotEdit">It cannot be made.</exception>
    public static PlannedEdit Plan(Draft draft, YamlPath path, NewScalar value)
    {
        var node = draft.NodeAt(path);
        RefuseOthers(draft, path, node, value);
        if (Means(node, value)) return new(path, old => old, []);
        var written = ScalarCandidates.Of(value, node.Style, node.IsInFlow()).First();
        return new(path, old => value.Meaning with { Marks = old.Marks }, [.. Edits(draft, node, written)]);
    }

    private static bool Means(YamlNode node, NewScalar value) =>
        Meaning.Of(node) is var now && Meaning.Same(now, value.Meaning with { Marks = now.Marks });

    private static void RefuseOthers(Draft draft, YamlPath path, YamlNode node, NewScalar value)
    {
        if (node.Kind == YamlKind.Alias)
            throw new CannotEdit($"{path} repeats a value from elsewhere (*{node.Value}); change it where it is marked &{node.Value}");
        if (!node.IsScalar)
            throw new CannotEdit($"{path} holds a {(node.IsMapping ? "mapping" : "list")}, not a single value");
        if (node.Tag is not null && value.Meaning.Type != CoreType.Text)
            throw new CannotEdit($"{path} is marked as a text by the tag {draft.Source.Slice(TextSpan.Between(node.Start, node.PropsEnd)).Trim()}");
        if (node.Tag is { } tag && tag.StartsWith(CoreTags, StringComparison.Ordinal) && tag != $"{CoreTags}str")
            throw new CannotEdit(
                $"{path} has the tag {draft.Source.Slice(TextSpan.Between(node.Start, node.PropsEnd)).Trim()}, under which a new text would mean something else; "
                + "take the tag away in a text editor first");
        if (value is { Kind: ScalarKind.Plain, Text.Length: 0 })
            throw new CannotEdit("an empty value is written by removing the entry");
    }

    private static IEnumerable<TextEdit> Edits(Draft draft, YamlNode node, WrittenScalar written)
    {
        var source = draft.Source;
        if (node.IsEmpty) return FillEmpty(draft, node, written);
        if (!written.IsOneLine) return WithBody(draft, node, new(HeadSpan(source, node), written.Head), written);
        if (IsLines(node)) return DropBody(source, node, written.Head);
        return [new(node.Span, written.Head)];
    }

    // After the colon, dash, anchor or tag, so that a comment on the line keeps its place.
    private static IEnumerable<TextEdit> FillEmpty(Draft draft, YamlNode node, WrittenScalar written)
    {
        if (node.Parent is { } parent && node.PropsEnd == node.Start)
        {
            var pair = parent.Pairs.FirstOrDefault(pair => pair.Value == node);
            if (pair is { ColonOffset: null })
            {
                return pair.QuestionOffset is null && parent.Style == YamlStyle.Flow
                    ? [TextEdit.Insert(pair.Key.End, $": {written.Head}")]
                    : throw new CannotEdit("the key after '?' has no ':' yet; write the value by hand");
            }
        }

        return WithBody(draft, node, TextEdit.Insert(node.CoreStart, $" {written.Head}"), written);
    }

    // A one-line value for lines of text: the comment after | stays at the end of the line.
    private static IEnumerable<TextEdit> DropBody(SourceText source, YamlNode node, string head)
    {
        var header = HeadSpan(source, node);
        return source.Slice(TextSpan.Between(header.End, source.EndOfLine(source.LineOf(header.End)))).TrimStart().StartsWith('#')
            ? [new(header, head), TextEdit.Remove(BodySpan(source, node))]
            : [new(node.Span, head)];
    }

    private static IEnumerable<TextEdit> WithBody(Draft draft, YamlNode node, TextEdit head, WrittenScalar written)
    {
        if (written.IsOneLine) return [head];
        var source = draft.Source;
        var lineBreak = source.BreakNear(source.LineOf(node.CoreStart));
        var lines = NodeWriter.BodyLines(written, BodyColumn(draft, node));
        return [head, new(BodySpan(source, node), string.Concat(lines.Select(line => lineBreak + line)))];
    }

    // The lines that are there show the indentation; otherwise it is the file's.
    private static int BodyColumn(Draft draft, YamlNode node) =>
        IsLines(node) && ShapeOf(draft.Source, node) is { HasBody: true } shape
            ? shape.BodyIndent
            : node.BlockColumn(draft.Source) + draft.Layout.Step;

    // What stands on the first line: the indicators of lines of text, or the whole of any other value.
    private static TextSpan HeadSpan(SourceText source, YamlNode node) =>
        IsLines(node) ? TextSpan.Between(node.CoreStart, ShapeOf(source, node).HeaderEnd) : node.Span;

    private static bool IsLines(YamlNode node) => node.Style is YamlStyle.Literal or YamlStyle.Folded;

    private static BlockScalarShape ShapeOf(SourceText source, YamlNode node) =>
        BlockScalarShape.Of(source, node.Span, node.BlockColumn(source));

    private static TextSpan BodySpan(SourceText source, YamlNode node)
    {
        var start = source.EndOfLine(source.LineOf(HeadSpan(source, node).End));
        return TextSpan.Between(start, Math.Max(start, node.End));
    }
}
