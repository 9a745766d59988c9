using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Stops the program for the shell's job control; `fg` brings it back as it was.</summary>
/// <remarks>Ctrl+Z is undo here, as in other editors of forms and tables.</remarks>
internal sealed class SuspendCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Z.WithShift];

    public override string KeyName => "Z";

    public override string Title => "Suspend to the shell; fg comes back";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Hand | EditorMode.Page;

    public override void Run(IEditor editor) => editor.Suspend();
}
