using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Takes back that a finding is let stand; with the last one goes the list.</summary>
public static class RemoveAcceptance
{
    public static Intended In(Snapshot snapshot, int index)
    {
        var rule = snapshot.Places.NodeAt(Places.Acceptance(index).Then(AcceptedFields.Rule.Key))?.Value;
        return Attempt.Of(
            snapshot,
            $"No longer accept {rule ?? $"finding {index + 1}"}",
            tree => Places.Accepted.Find(tree) is { Items.Length: 1 } && index == 0
                ? YamlEditor.RemoveEntry(tree, Places.Accepted)
                : YamlEditor.RemoveItem(tree, Places.Accepted, index));
    }
}
