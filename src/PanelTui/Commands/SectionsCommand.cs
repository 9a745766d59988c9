using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Opens every section of the file: panel, feeder, source, scenarios and the rest.</summary>
internal sealed class SectionsCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.A];

    public override string KeyName => "a";

    public override string Title => "All fields: panel, source, and so on";

    public override string? Hint => "fields";

    public override EditorMode Modes => EditorMode.Face;

    public override void Run(IEditor editor) => editor.Open(new SectionsPage(editor.Session.Here?.Ordinal));
}
