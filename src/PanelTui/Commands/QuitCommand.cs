using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Leaves the program; with unsaved changes it asks.</summary>
internal sealed class QuitCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Q, Key.Q.WithCtrl, Key.C.WithCtrl];

    public override string KeyName => "q";

    public override string Title => "Quit";

    public override string? Hint => "quit";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Hand;

    public override void Run(IEditor editor)
    {
        if (editor.Session.IsSaved) editor.Leave();
        else editor.Enter(EditorMode.Leaving);
    }

}
