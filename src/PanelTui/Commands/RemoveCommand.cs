using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Removes the breaker under the cursor; undo brings it back.</summary>
internal sealed class RemoveCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.D, Key.Delete];

    public override string KeyName => "d";

    public override string Title => "Remove the breaker here";

    public override string? Hint => "remove";

    public override EditorMode Modes => EditorMode.Face;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) => editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: there is no breaker to remove" : null;

    public override void Run(IEditor editor)
    {
        var ordinal = editor.Session.Here!.Ordinal;
        if (editor.Session.Do(snapshot => RemoveCircuit.In(snapshot, ordinal)) is { } refusal) editor.Session.Say(refusal);
    }

}
