using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Intents;

/// <summary>Hangs breakers into other spaces, all in one step: only their `space` keys change.</summary>
public static class MoveCircuits
{
    /// <exception cref="CannotEdit">The text cannot be changed without doubt.</exception>
    public static TextChange In(Snapshot snapshot, IEnumerable<Hop> hops)
    {
        var moves = hops.ToList();
        var steps = moves.Select(hop => (Func<YamlTree, TextChange>)(tree => Move(tree, hop)));
        return Edits.InOrder(snapshot.Tree!, TitleOf(snapshot.Schedule!, moves), [.. steps]);
    }

    private static TextChange Move(YamlTree tree, Hop hop) => YamlEditor.SetScalar(
        tree, YamlPath.Of("circuits", hop.Ordinal, "space"), new NewScalar($"{hop.To}", ScalarKind.Plain));

    private static string TitleOf(Schedule schedule, List<Hop> moves)
    {
        var (first, from) = (moves[0], schedule.Circuits[moves[0].Ordinal]);
        var title = $"Moved {Called(from)} from {from.Space} to {first.To}";
        return moves.Count == 1
            ? title
            : $"{title}; {string.Join(", ", moves.Skip(1).Select(hop => $"{Called(schedule.Circuits[hop.Ordinal])} to {hop.To}"))}";
    }

    private static string Called(Circuit circuit) => circuit.Name.Length == 0 ? $"the breaker at {circuit.Space}" : circuit.Name;
}
