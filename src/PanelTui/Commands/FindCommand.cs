using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Finds a circuit by a part of its name, load or space.</summary>
internal sealed class FindCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [new Key('/'), Key.F.WithCtrl];

    public override string KeyName => "/";

    public override string Title => "Find a circuit";

    public override string? Hint => "find";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new FindPage());
}
