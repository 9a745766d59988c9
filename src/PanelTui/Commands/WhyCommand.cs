using System.Collections.Immutable;
using PanelTui.Engine.Derivations;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Shows how a figure came about.</summary>
internal sealed class WhyCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.Y];

    public override string KeyName => "y";

    public override string Title => "Why: how a figure came about";

    public override string? Hint => "why";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new WhyPage(FigureNames.Connected));
}
