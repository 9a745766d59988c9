using System.Collections.Immutable;
using PanelTui.Editing;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Writes the schedule under another name.</summary>
internal sealed class SaveElsewhereCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.W];

    public override string KeyName => "w";

    public override string Title => "Save under another name";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new ElsewhereForm(editor.Session.Path));
}
