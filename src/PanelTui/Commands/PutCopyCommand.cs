using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using PanelTui.Editing;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Puts a copy of the remembered breaker into the open space under the cursor.</summary>
internal sealed class PutCopyCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.P, Key.V.WithCtrl];

    public override string KeyName => "p";

    public override string Title => "Put the copied breaker here";

    public override EditorMode Modes => EditorMode.Face;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) =>
        editor.Session.Copied is not { } copied
            ? "No breaker has been copied yet: c copies the one under the cursor"
            : OpenSpace.WhyNot(editor.Session.Schedule, editor.Session.Cursor, copied.Circuit.Breaker.Poles);

    public override void Run(IEditor editor)
    {
        var (copied, at) = (editor.Session.Copied!, editor.Session.Cursor);
        if (editor.Session.Do(snapshot => CopyCircuit.In(snapshot, copied.From, copied.Circuit.Ordinal, at)) is { } refusal)
            editor.Session.Say(refusal);
    }
}
