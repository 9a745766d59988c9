using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Paints the whole screen anew, for when something else has written on it.</summary>
internal sealed class RepaintCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.L.WithCtrl];

    public override string KeyName => "^L";

    public override string Title => "Paint the screen anew";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Hand | EditorMode.Page;

    public override void Run(IEditor editor) => editor.Repaint();
}
