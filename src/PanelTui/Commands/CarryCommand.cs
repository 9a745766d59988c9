using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Takes the breaker under the cursor into the hand.</summary>
internal sealed class CarryCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Space, Key.M];

    public override string KeyName => "Space";

    public override string Title => "Carry the breaker to another space";

    public override string? Hint => "carry";

    public override EditorMode Modes => EditorMode.Face;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) => editor.Session.Here is null ? $"Space {editor.Session.Cursor} is open: there is no breaker to carry" : null;

    public override void Run(IEditor editor) => editor.Session.Hold(editor.Session.Here!);
}
