using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Takes back the last change.</summary>
internal sealed class UndoCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.U, Key.Z.WithCtrl];

    public override string KeyName => "u";

    public override string Title => "Undo";

    public override string? Hint => "undo";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Page;

    public override string? WhyNot(IEditor editor) => editor.Session.UndoTitle is null ? "Nothing has been changed yet; Z suspends to the shell" : null;

    public override void Run(IEditor editor) => editor.Session.Undo();
}
