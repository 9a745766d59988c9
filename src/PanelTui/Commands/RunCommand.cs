using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows what the source feels, what can start, and how long the reserve lasts.</summary>
internal sealed class RunCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.X];

    public override string KeyName => "x";

    public override string Title => "On standby: what runs, starts and lasts";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new RunPage());
}
