using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Opens the loads of the breaker under the cursor as a table.</summary>
internal sealed class LoadsCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.L];

    public override string KeyName => "l";

    public override string Title => "Loads of the breaker here";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor) =>
        editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: nothing hangs on it" : null;

    public override void Run(IEditor editor) => EntriesPages.Open(editor, Places.Loads(editor.Session.Here!.Ordinal));
}
