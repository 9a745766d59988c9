using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Lists every finding, and those that are accepted.</summary>
internal sealed class FindingsCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.F.WithShift];

    public override string KeyName => "F";

    public override string Title => "List all findings";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new FindingsPage());
}
