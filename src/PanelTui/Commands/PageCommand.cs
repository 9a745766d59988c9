using System.Collections.Immutable;
using PanelTui.Pages;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>What a key does on a page.</summary>
internal sealed class PageCommand(string keyName, string title, Action<IEditor, Page> run, params Key[] keys) : EditorCommand
{
    /// <summary>The keys by which every page is walked and closed.</summary>
    public static readonly ImmutableArray<EditorCommand> All =
    [
        new PageCommand("Enter", "Do what the chosen row stands for", (editor, _) => editor.ChooseRow(), Key.Enter)
        {
            Needs = (editor, _) => editor.CanChooseRow ? null : "Nothing can be chosen here",
            Word = "choose",
        },
        new PageCommand("←→", "Turn to the next of its kind", (editor, page) => page.Turn(editor.Session, 1), Key.CursorRight, Key.Tab)
        {
            Needs = (_, page) => page.CanTurn ? null : "There is nothing to turn to",
            Word = "turn",
        },
        new PageCommand("←", "Turn back", (editor, page) => page.Turn(editor.Session, -1), Key.CursorLeft, Key.Tab.WithShift)
        {
            Needs = (_, page) => page.CanTurn ? null : "There is nothing to turn to",
        },
        new PageCommand("↑↓", "Down a row", (editor, _) => editor.WalkPage(1), Key.CursorDown) { Word = "rows" },
        new PageCommand("↑", "Up a row", (editor, _) => editor.WalkPage(-1), Key.CursorUp),
        new PageCommand("PgDn", "Down a page", (editor, _) => editor.WalkPage(editor.PageOfLines), Key.PageDown),
        new PageCommand("PgUp", "Up a page", (editor, _) => editor.WalkPage(-editor.PageOfLines), Key.PageUp),
        new PageCommand("Home", "To the top", (editor, _) => editor.WalkPage(-Far), Key.Home),
        new PageCommand("End", "To the bottom", (editor, _) => editor.WalkPage(Far), Key.End),
        new PageCommand("Esc", "Close the page", (editor, _) => editor.ClosePage(), Key.Esc, Key.Q) { Word = "back" },
    ];

    private const int Far = 100_000;

    public override ImmutableArray<Key> Keys { get; } = [.. keys];

    public override string KeyName => keyName;

    public override string Title => title;

    /// <summary>One word for the line of keys.</summary>
    public string? Word { get; init; }

    public override string? Hint => Word;

    /// <summary>Why it can do nothing on this page now.</summary>
    public Func<IEditor, Page, string?>? Needs { get; init; }

    public override EditorMode Modes => EditorMode.Page;

    public override bool Changes => Edits;

    /// <summary>Whether it changes the schedule.</summary>
    public bool Edits { get; init; }

    public override string? WhyNot(IEditor editor) => Needs?.Invoke(editor, editor.Page!);

    public override void Run(IEditor editor) => run(editor, editor.Page!);
}
