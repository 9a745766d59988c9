using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Saves, then leaves.</summary>
internal sealed class SaveAndLeaveCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.S, Key.S.WithCtrl];

    public override string KeyName => "s";

    public override string Title => "Save and quit";

    public override string? Hint => "save and quit";

    public override EditorMode Modes => EditorMode.Leaving;

    public override void Run(IEditor editor)
    {
        editor.Enter(EditorMode.Face);
        if (Saving.Try(editor)) editor.Leave();
    }
}
