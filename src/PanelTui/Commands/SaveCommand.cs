using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Writes the file.</summary>
internal sealed class SaveCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.S.WithCtrl];

    public override string KeyName => "^S";

    public override string Title => "Save";

    public override string? Hint => "save";

    public override EditorMode Modes => EditorMode.Face | EditorMode.Page;

    public override string? WhyNot(IEditor editor) =>
        editor.Session is { IsSaved: true, Newer: null } ? "Nothing has changed since the last save" : null;

    public override void Run(IEditor editor) => Saving.Try(editor);
}
