using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>Hangs breakers into other spaces, all in one step: nothing but their `space` changes.</summary>
public static class MoveCircuits
{
    /// <param name="title">What undo will call it; nothing for one made of the moves.</param>
    public static Intended In(Snapshot snapshot, IEnumerable<Hop> hops, string? title = null)
    {
        var moves = hops.ToList();
        var steps = moves.Select(hop => (Func<YamlTree, TextChange>)(tree => YamlEditor.SetScalar(
            tree, PathOf(hop.Ordinal), new($"{hop.To}", ScalarKind.Plain))));
        return Attempt.Of(snapshot, title ?? TitleOf(snapshot, moves), [.. steps]);
    }

    private static YamlPath PathOf(int ordinal) => Places.Circuit(ordinal).Then(CircuitFields.Space.Key);

    private static string TitleOf(Snapshot snapshot, List<Hop> moves)
    {
        var from = snapshot.Places.NodeAt(PathOf(moves[0].Ordinal))?.Value ?? "?";
        var others = moves.Skip(1).Select(hop => $"; {Called.Circuit(snapshot, hop.Ordinal)} to {hop.To}");
        return $"Move {Called.Circuit(snapshot, moves[0].Ordinal)} from {from} to {moves[0].To}{string.Concat(others)}";
    }
}
