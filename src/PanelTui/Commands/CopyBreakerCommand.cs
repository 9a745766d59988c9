using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Remembers the breaker under the cursor, to be put into other spaces.</summary>
internal sealed class CopyBreakerCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.C];

    public override string KeyName => "c";

    public override string Title => "Copy the breaker here";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor) =>
        editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: there is no breaker to copy" : null;

    public override void Run(IEditor editor) => editor.Session.Remember(editor.Session.Here!);
}
