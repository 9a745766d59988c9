using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// One edit in the making. It works on the text with a final line break, lent where the file has none, so that every line
/// is a whole line; and it lets nothing out that does not read back as intended.
/// </summary>
/// <remarks>
/// The idea: an edit is a few replacements in the text, found from the places in the tree, and a sentence about meanings. The new text
/// is read from scratch and its meaning compared with the old meaning changed in that one place; only then does the edit count. Reading
/// and comparing are O(n) for n characters, the replacements O(n + k) for k of them, and the tree that was read goes along with the
/// change, so that the file is read once for an edit.
/// Example: in "breaker: 15 A  # lights" the value stands at [9..13). Setting "20 A" replaces these four characters; the new text reads
/// as {breaker: "20 A"}, which is the old {breaker: "15 A"} with that value changed, so the comment stays where it was.
/// </remarks>
internal sealed class Draft
{
    private readonly YamlTree _original;
    private readonly bool _isLent;
    private YamlProblem? _problem;
    private PageLayout? _layout;

    private Draft(YamlTree original, YamlTree tree)
    {
        _original = original;
        _isLent = original != tree;
        Tree = tree;
    }

    /// <summary>The tree to take places from.</summary>
    public YamlTree Tree { get; }

    public SourceText Source => Tree.Source;

    public PageLayout Layout => _layout ??= PageLayout.Of(Tree);

    public static Draft Of(YamlTree tree)
    {
        var text = tree.Source.Text;
        if (text.Length == 0 || text[^1] is '\n' or '\r') return new(tree, tree);
        var lent = tree.Source.WithText(text + tree.Source.BreakNear(tree.Source.LineCount));
        return new(tree, YamlTree.Parse(lent));
    }

    /// <summary>The value at a path.</summary>
    /// <exception cref="CannotEdit">There is none, or a key on the way stands there twice.</exception>
    public YamlNode NodeAt(YamlPath path)
    {
        var node = Tree.Root;
        foreach (var step in path.Steps)
        {
            if (step.Key is { } key && node?.Pairs.Count(pair => pair.Key.IsScalar && pair.Key.Value == key) > 1)
                throw new CannotEdit($"the key {key} stands there more than once, in {path}; take one away by hand first");
            node = node is null ? null : step.From(node);
        }

        return node ?? throw new CannotEdit($"there is no {path} in the file");
    }

    /// <summary>What the file will mean once the value at the path means something else.</summary>
    public Meaning With(YamlPath path, Func<Meaning, Meaning> change) =>
        path.Find(_original) is { } node ? Meaning.Of(_original, node, change) : change(Meaning.Nothing);

    /// <summary>The first of several ways to make the edit that reads back as intended.</summary>
    /// <exception cref="CannotEdit">None does.</exception>
    public TextChange Commit(string title, IEnumerable<IEnumerable<TextEdit>> ways, Meaning intended) =>
        ways.Select(edits => Attempt(title, edits, intended)).FirstOrDefault(change => change is not null)
        ?? throw new CannotEdit(Reason, _problem);

    public TextChange Commit(string title, IEnumerable<TextEdit> edits, Meaning intended) =>
        Commit(title, [edits], intended);

    /// <summary>Edits of different nodes as one change; nothing where together they would not read back as intended.</summary>
    public TextChange? CommitAll(string title, IEnumerable<PlannedEdit> plans)
    {
        var (changes, edits) = (new Dictionary<YamlNode, Func<Meaning, Meaning>>(), new List<TextEdit>());
        foreach (var plan in plans)
        {
            if (plan.Path.Find(_original) is not { } node || !changes.TryAdd(node, plan.Change)) return null;
            edits.AddRange(plan.Edits);
        }

        return Attempt(title, edits, Meaning.Of(_original, changes));
    }

    private string Reason => _problem is null
        ? "the file would not read back as intended, so nothing was changed"
        : $"the file could no longer be read, so nothing was changed: {_problem.Message}";

    private TextChange? Attempt(string title, IEnumerable<TextEdit> edits, Meaning intended)
    {
        var change = TextChange.OfDisjoint(title, edits.Where(edit => edit.NewText != Source.Slice(edit.Span)));
        var text = change.ApplyTo(Source.Text);
        if (!_isLent) return ReadBack(text, intended) is { } tree ? change with { Result = tree } : null;
        return Endings(text).Select(ending => ReadBack(ending, intended)).FirstOrDefault(read => read is not null) is { } found
            ? TextChange.Between(title, _original.Source.Text, found.Source.Text) with { Result = found }
            : null;
    }

    // Without the lent break where that leaves a last line with characters; with it otherwise.
    private static IEnumerable<string> Endings(string text)
    {
        var bare = text.EndsWith("\r\n", StringComparison.Ordinal) ? text[..^2] : text[..^1];
        if (bare.Length > 0 && bare[^1] is not ('\n' or '\r')) yield return bare;
        yield return text;
    }

    // Null where the text cannot be read, or says something else.
    private YamlTree? ReadBack(string text, Meaning intended)
    {
        try
        {
            var tree = YamlTree.Parse(Source.WithText(text));
            return Meaning.Same(Meaning.Of(tree), intended) ? tree : null;
        }
        catch (YamlProblem problem)
        {
            _problem ??= problem;
            return null;
        }
    }
}
