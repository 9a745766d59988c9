using System.Collections.Immutable;
using PanelTui.Editing;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Opens the breaker under the cursor for editing.</summary>
internal sealed class EditCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Enter, Key.E, Key.F2];

    public override string KeyName => "Enter";

    public override string Title => "Edit the breaker here";

    public override string? Hint => "edit";

    public override EditorMode Modes => EditorMode.Face;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) =>
        editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: there is no breaker to edit" : null;

    public override void Run(IEditor editor) => editor.Open(new EditCircuitForm(editor.Session.Now, editor.Session.Here!));

}
