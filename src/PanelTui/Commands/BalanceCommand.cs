using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Asks which breakers to move for even legs.</summary>
internal sealed class BalanceCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.B];

    public override string KeyName => "b";

    public override string Title => "Find a better balance";

    public override EditorMode Modes => EditorMode.Face;

#pragma warning disable CA2000 // Closing the page disposes it.
    public override void Run(IEditor editor) => editor.Open(new BalancePage(editor.Later));
#pragma warning restore CA2000
}
