using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Lets two circuits change places: each gets the other's top space.</summary>
public static class SwapCircuits
{
    public static Intended In(Snapshot snapshot, int one, int other)
    {
        if (Space(snapshot, one) is not { } first || Space(snapshot, other) is not { } second)
            return Intended.Refused("a circuit without a space cannot change places");
        var title = $"Swap {Called.Circuit(snapshot, one)} and {Called.Circuit(snapshot, other)}";
        var done = Attempt.Of(snapshot, title, tree => AtOnce(tree, (one, second), (other, first)));
        return done.IsPossible ? done : Attempt.Of(
            snapshot,
            title,
            tree => YamlEditor.SetScalar(tree, PathOf(one), new(second, ScalarKind.Plain)),
            tree => YamlEditor.SetScalar(tree, PathOf(other), new(first, ScalarKind.Plain)));
    }

    private static TextChange AtOnce(YamlTree tree, params ReadOnlySpan<(int Ordinal, string Space)> moves)
    {
        var values = new List<(YamlPath, NewScalar, string?)>();
        foreach (var (ordinal, space) in moves) values.Add((PathOf(ordinal), new(space, ScalarKind.Plain), null));
        return YamlEditor.SetScalars(tree, values) ?? throw new CannotEdit("the two spaces cannot be set at once");
    }

    private static string? Space(Snapshot snapshot, int ordinal) => snapshot.Places.NodeAt(PathOf(ordinal))?.Value;

    private static YamlPath PathOf(int ordinal) => Places.Circuit(ordinal).Then(CircuitFields.Space.Key);
}
