using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Puts the breaker in the hand back where it came from.</summary>
internal sealed class PutBackCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Esc];

    public override string KeyName => "Esc";

    public override string Title => "Put the breaker back";

    public override string? Hint => "put back";

    public override EditorMode Modes => EditorMode.Hand;

    public override void Run(IEditor editor)
    {
        var from = editor.Session.Hand!.Circuit.Space;
        editor.Session.LetGo();
        editor.Session.MoveCursor(from);
    }

}
