using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Makes the change again that was undone last.</summary>
internal sealed class RedoCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.R, Key.Y.WithCtrl, Key.R.WithCtrl];

    public override string KeyName => "r";

    public override string Title => "Redo";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Page;

    public override string? WhyNot(IEditor editor) => editor.Session.RedoTitle is null ? "Nothing has been undone" : null;

    public override void Run(IEditor editor) => editor.Session.Redo();
}
