using System.Collections.Immutable;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;

namespace PanelTui.Documents.Writing;

/// <summary>Writes a new value in the layout of the file.</summary>
/// <param name="layout">The file's layout.</param>
/// <param name="isCautious">
/// Whether to put every text in double quotes: the second try when the first does not read back right.
/// </param>
internal sealed class NodeWriter(PageLayout layout, bool isCautious)
{
    // A little less than the 1,024 that YAML allows a key on one line, quotes and escapes not counted.
    private const int MaxKeyLength = 150;

    /// <summary>The writers to try one after the other.</summary>
    public static NodeWriter[] Both(PageLayout layout) =>
        [new(layout, isCautious: false), new(layout, isCautious: true)];

    /// <summary>A value after a key that stands in the given column.</summary>
    public Rendered BelowKey(NewNode node, int keyColumn) => node switch
    {
        NewMapping { Entries.Length: > 0 } map when !IsFlow(map) =>
            Below(Entries(map, keyColumn + layout.Step), keyColumn + layout.Step),
        NewSequence { Items.Length: > 0 } list when !IsFlow(list) =>
            Below(Items(list, keyColumn + layout.ListStep), keyColumn + layout.ListStep),
        NewScalar scalar => Scalar(scalar, keyColumn),
        _ => new(Flow(node)),
    };

    /// <summary>A value after a dash that stands in the given column.</summary>
    public Rendered AfterDash(NewNode node, int dashColumn) => node switch
    {
        NewMapping { Entries.Length: > 0 } map when !IsFlow(map) => Beside(Entries(map, dashColumn + layout.DashWidth)),
        NewSequence { Items.Length: > 0 } list when !IsFlow(list) => Beside(Items(list, dashColumn + layout.DashWidth)),
        NewScalar scalar => Scalar(scalar, dashColumn),
        _ => new(Flow(node)),
    };

    public Rendered Entry(string key, NewNode value, int column) => BelowKey(value, column).After($"{Key(key)}:");

    public Rendered Item(NewNode value, int column) => AfterDash(value, column).After("-", layout.DashWidth - 1);

    public string FlowEntry(string key, NewNode value) => $"{Key(key)}: {Flow(value)}";

    /// <summary>A value in brackets or without line breaks, as it stands inside brackets.</summary>
    public string Flow(NewNode node) => node switch
    {
        NewMapping map => $"{{{string.Join(", ", map.Entries.Select(entry => FlowEntry(entry.Key, entry.Value)))}}}",
        NewSequence list => $"[{string.Join(", ", list.Items.Select(Flow))}]",
        _ => Best((NewScalar)node, inFlow: true).Head,
    };

    private static bool IsFlow(NewMapping map) => map.Style == CollectionStyle.Flow;

    private static bool IsFlow(NewSequence list) => list.Style switch
    {
        CollectionStyle.LikeNeighbours => list.Items.All(item => item is NewScalar),
        CollectionStyle.Flow => true,
        CollectionStyle.Block => false,
        _ => throw Unnamed.Of(list.Style),
    };

    private IEnumerable<(Rendered Text, int Column)> Entries(NewMapping map, int column) =>
        map.Entries.Select(entry => (Entry(entry.Key, entry.Value, column), column));

    private IEnumerable<(Rendered Text, int Column)> Items(NewSequence list, int column) =>
        list.Items.Select(item => (Item(item, column), column));

    private static Rendered Below(IEnumerable<(Rendered Text, int Column)> parts, int column)
    {
        var beside = Beside(parts);
        return new("", [Indent(column) + beside.Inline, .. beside.Lines]);
    }

    // The first part follows on the line that is there; the others get lines of their own.
    private static Rendered Beside(IEnumerable<(Rendered Text, int Column)> parts)
    {
        var all = parts.ToImmutableArray();
        var rest = all.Skip(1).SelectMany(part => part.Text.Lines.Prepend(Indent(part.Column) + part.Text.Inline));
        return new(all[0].Text.Inline, [.. all[0].Text.Lines, .. rest]);
    }

    private Rendered Scalar(NewScalar scalar, int parentColumn)
    {
        var written = Best(scalar, inFlow: false);
        return new(written.Head, BodyLines(written, parentColumn + layout.Step));
    }

    internal static ImmutableArray<string> BodyLines(WrittenScalar written, int column) =>
        [.. written.Body.Select(line => line.Length == 0 ? "" : Indent(column) + line)];

    // A key is held to the stricter rules of brackets everywhere, which also keep it on one line.
    private string Key(string key) => key.Length <= MaxKeyLength
        ? Best(new(key, ScalarKind.Text), inFlow: true).Head
        : throw new CannotEdit($"the key is longer than {MaxKeyLength} characters");

    private WrittenScalar Best(NewScalar scalar, bool inFlow)
    {
        var old = isCautious ? YamlStyle.DoubleQuoted : YamlStyle.Plain;
        foreach (var candidate in ScalarCandidates.Of(scalar, old, inFlow)) return candidate;
        throw new CannotEdit($"\"{scalar.Text}\" cannot be written without quotes and still be read as intended");
    }

    private static string Indent(int column) => new(' ', column);
}
