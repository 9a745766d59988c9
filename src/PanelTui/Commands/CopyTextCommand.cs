using System.Collections.Immutable;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Sends the line of the circuit under the cursor to the clipboard of the terminal.</summary>
internal sealed class CopyTextCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.C.WithShift];

    public override string KeyName => "C";

    public override string Title => "Copy the text of the circuit to the clipboard";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor) =>
        editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: there is no text to copy" : null;

    public override void Run(IEditor editor)
    {
        var session = editor.Session;
        editor.CopyText(CircuitText.Line(session.Assessment, session.Here!, LoadPhrase.Of(session.Now, session.Here!.Ordinal)));
    }
}
