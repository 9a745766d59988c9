using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Settles the conflicts that a merge left in the file.</summary>
internal sealed class SettleCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.M.WithShift];

    public override string KeyName => "M";

    public override string Title => "Settle the conflicts of a merge";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor) => editor.Session.ToSettle is null ? "The file has no conflicts" : null;

    public override void Run(IEditor editor) => editor.Open(new SettlePage(editor.Session.ToSettle!.Merge, editor.Session.ToSettle.Read));
}
