using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Intents;

/// <summary>Lets a finding stand for a reason, after those that are let stand already.</summary>
public static class AddAcceptance
{
    /// <param name="snapshot">The file.</param>
    /// <param name="rule">As `check` names it.</param>
    /// <param name="space">A space that the finding is about; empty for every finding of the rule.</param>
    /// <param name="because">Why, for whoever reads it next.</param>
    public static Intended In(Snapshot snapshot, string rule, string space, string because)
    {
        if (string.IsNullOrWhiteSpace(rule)) return Intended.Refused($"which rule? write {AcceptedFields.Rule.Expected}");
        if (string.IsNullOrWhiteSpace(because)) return Intended.Refused("a finding is let stand for a reason; write it");
        var (entries, refusal) = Typing.Entries(
            AcceptedFields.Rule.Owner,
            [
                new(AcceptedFields.Rule.Key, rule),
                new(AcceptedFields.Space.Key, space),
                new(AcceptedFields.Because.Key, because),
            ]);
        return refusal is null
            ? Attempt.Of(
                snapshot,
                $"Accept {rule.Trim()}{(space.Length > 0 ? $" at {space.Trim()}" : "")}",
                tree => NewItem.Of(tree, Places.Accepted, Places.Accepted.Find(tree)?.Items.Length ?? 0, new NewMapping(entries)))
            : Intended.Refused(refusal);
    }
}
