using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows what has changed since the last save or the last commit.</summary>
internal sealed class ChangesCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.V];

    public override string KeyName => "v";

    public override string Title => "What changed since saving, since the commit";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new ChangesPage());
}
