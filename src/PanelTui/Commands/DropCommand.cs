using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Drops the breaker where the cursor is.</summary>
internal sealed class DropCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Enter, Key.Space];

    public override string KeyName => "Enter";

    public override string Title => "Drop the breaker here";

    public override string? Hint => "drop";

    public override EditorMode Modes => EditorMode.Hand;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) => editor.Session.Hand?.Plan.WhyNot is { } why ? $"Does not fit: {why}" : null;

    public override void Run(IEditor editor)
    {
        var (hand, refusal) = (editor.Session.Hand!, (string?)null);
        if (hand.Change is { } change) refusal = editor.Session.Do(change);
        if (refusal is not null) editor.Session.Say(refusal);
        else editor.Session.LetGo();
    }

}
