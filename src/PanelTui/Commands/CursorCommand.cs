using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Walks the face of the panel: down its lines, and across the bus.</summary>
internal sealed class CursorCommand(string keyName, string title, Func<IEditor, Face, SpaceNumber> target, params Key[] keys) : EditorCommand
{
    public static readonly ImmutableArray<EditorCommand> All =
    [
        new CursorCommand("↑", "Up a line", (editor, face) => Walk.By(face, editor.Session.Cursor, -1), Key.CursorUp),
        new CursorCommand("↓", "Down a line", (editor, face) => Walk.By(face, editor.Session.Cursor, 1), Key.CursorDown),
        new CursorCommand("←", "To the left side", (editor, face) => Walk.Across(face, editor.Session.Cursor, left: true), Key.CursorLeft),
        new CursorCommand("→", "To the right side", (editor, face) => Walk.Across(face, editor.Session.Cursor, left: false), Key.CursorRight),
        new CursorCommand(
            "Tab", "Across the bus", (editor, face) => Walk.Across(face, editor.Session.Cursor, !editor.Session.Cursor.IsLeft), Key.Tab),
        new CursorCommand("PgUp", "Up a page", (editor, face) => Walk.By(face, editor.Session.Cursor, -editor.PageOfLines), Key.PageUp),
        new CursorCommand("PgDn", "Down a page", (editor, face) => Walk.By(face, editor.Session.Cursor, editor.PageOfLines), Key.PageDown),
        new CursorCommand("Home", "To the top", (editor, face) => Walk.By(face, editor.Session.Cursor, -face.Lines.Length), Key.Home),
        new CursorCommand("End", "To the bottom", (editor, face) => Walk.By(face, editor.Session.Cursor, face.Lines.Length), Key.End),
    ];

    public override ImmutableArray<Key> Keys { get; } = [.. keys];

    public override string KeyName => keyName;

    public override string Title => title;

    public override EditorMode Modes => EditorMode.Face | EditorMode.Hand;

    public override void Run(IEditor editor) =>
        editor.Session.MoveCursor(target(editor, editor.Session.Face));
}
