using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Goes to the next finding, worst first, and says it in full.</summary>
internal sealed class NextFindingCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.F, Key.F8];

    public override string KeyName => "f";

    public override string Title => "Go to the next finding";

    public override string? Hint => "finding";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor) => editor.Session.Assessment.Findings.IsEmpty ? "There are no findings" : null;

    public override void Run(IEditor editor) => editor.Session.NextFinding();
}
