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
        var called = title ?? TitleOf(snapshot, moves);
        if (moves.Count > 1 && Attempt.Of(snapshot, called, tree => AtOnce(tree, moves)) is { IsPossible: true } done) return done;
        return Attempt.Of(snapshot, called, [.. moves.Select(hop => (Func<YamlTree, TextChange>)(tree => YamlEditor.SetScalar(tree, PathOf(hop.Ordinal), SpaceOf(hop))))]);
    }

    /// <summary>A swap takes as long as one move.</summary>
    private static TextChange AtOnce(YamlTree tree, List<Hop> moves) =>
        YamlEditor.SetScalars(tree, moves.Select(hop => (PathOf(hop.Ordinal), SpaceOf(hop), (string?)null)))
            ?? throw new CannotEdit("not at once");

    private static NewScalar SpaceOf(Hop hop) => new($"{hop.To}", ScalarKind.Plain);

    private static YamlPath PathOf(int ordinal) => Places.Circuit(ordinal).Then(CircuitFields.Space.Key);

    private static string TitleOf(Snapshot snapshot, List<Hop> moves)
    {
        var from = snapshot.Places.NodeAt(PathOf(moves[0].Ordinal))?.Value ?? "?";
        var others = moves.Skip(1).Select(hop => $"; {Called.Circuit(snapshot, hop.Ordinal)} to {hop.To}");
        return $"Move {Called.Circuit(snapshot, moves[0].Ordinal)} from {from} to {moves[0].To}{string.Concat(others)}";
    }
}
