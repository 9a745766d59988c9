using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Tables;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>The keys of the table of breakers.</summary>
internal static class TableCommands
{
    private const string NothingShown = "No breaker is shown";

    public static ImmutableArray<EditorCommand> Of(TablePage page) =>
    [
        new PageCommand("Enter", "All fields of the breaker of the row", (editor, _) => editor.ChooseRow(), Key.Enter)
        {
            Needs = (editor, _) => editor.CanChooseRow ? null : NothingShown,
            Word = "fields",
        },
        new PageCommand("e", "Edit the cell", (editor, _) => page.Edit(editor), Key.E, Key.F2) { Edits = true, Needs = (editor, _) => page.WhyNot(editor.Session), Word = "edit" },
        .. Digits(page),
        new PageCommand("←→", "To the next column", (editor, _) => page.Turn(editor, 1), Key.CursorRight, Key.Tab) { Word = "columns" },
        new PageCommand("←", "To the column before", (editor, _) => page.Turn(editor, -1), Key.CursorLeft, Key.Tab.WithShift),
        new PageCommand("Space", "Mark the row, or take its mark away", (editor, _) => page.Mark(editor), Key.Space)
        {
            Needs = (editor, _) => page.Here(editor.Session) is null ? NothingShown : null,
            Word = "mark",
        },
        new PageCommand("=", "Set the column for all marked rows", (editor, _) => page.SetMeant(editor), new Key('='))
        {
            Edits = true,
            Needs = (editor, _) => page.Meant(editor.Session) is { IsEmpty: false } rows ? rows.Select(page.Column.WhyNot).FirstOrDefault(why => why is not null) : NothingShown,
            Word = "set",
        },
        new PageCommand("s", "Sort by the column; once more turns around", (editor, _) => page.Sort(editor), Key.S) { Word = "sort" },
        new PageCommand("/", "Show only rows with what is typed", (editor, _) => page.TakeLetters(editor, true), new Key('/'), Key.F.WithCtrl) { Word = "narrow" },
        new PageCommand("Esc", "Show all rows again", (editor, _) => page.ShowAll(editor), Key.Esc)
        {
            Needs = (_, _) => page.Typed.Length > 0 ? null : "All rows are shown",
            Word = "all rows",
        },
        new PageCommand("+", "Mark all rows that are shown", (editor, _) => page.MarkAll(editor), new Key('+'))
        {
            Needs = (editor, _) => page.Here(editor.Session) is null ? NothingShown : null,
        },
        new PageCommand("-", "Take all marks away", (editor, _) => page.ClearMarks(editor), new Key('-')) { Needs = (editor, _) => NoMark(page, editor) },
        new PageCommand("\"", "The value of the row above, and down", (editor, _) => page.AsAbove(editor), new Key('"'))
        {
            Edits = true,
            Needs = (editor, _) => page.WhyNot(editor.Session) ?? (page.Place.Chosen > 0 ? null : "No row is above this one"),
        },
        new PageCommand("g", "Give the marked rows the value of this cell", (editor, _) => RowEdits.Set(editor, page.Column, page.Marked(editor.Session), page.Here(editor.Session)!), Key.G)
        {
            Edits = true,
            Needs = (editor, _) => NoMark(page, editor) ?? page.WhyNot(editor.Session),
        },
        new PageCommand("o", "Off standby, or on it: marked rows, else this", (editor, _) => RowEdits.Switch(editor, page.Meant(editor.Session)), Key.O)
        {
            Edits = true,
            Needs = (editor, _) => page.Meant(editor.Session).IsEmpty ? NothingShown : null,
        },
        new PageCommand("Del", "Remove the marked breakers, else this one", (editor, _) => RowEdits.Remove(editor, page.Meant(editor.Session)), Key.Delete, Key.D)
        {
            Edits = true,
            Needs = (editor, _) => page.Meant(editor.Session).IsEmpty ? NothingShown : null,
        },
        new PageCommand("Bksp", "Clear the cell", (editor, _) => RowEdits.Clear(editor, page.Column, page.Here(editor.Session)!), Key.Backspace)
        {
            Edits = true,
            Needs = (editor, _) => page.WhyNot(editor.Session),
        },
        new PageCommand("C", "Copy the marked rows, else this one, for a spreadsheet", (editor, _) => RowEdits.Copy(editor, page.Meant(editor.Session)), Key.C.WithShift)
        {
            Needs = (editor, _) => page.Meant(editor.Session).IsEmpty ? NothingShown : null,
        },
    ];

    /// <summary>While letters narrow the rows down.</summary>
    public static ImmutableArray<EditorCommand> WhileTyping(TablePage page) =>
    [
        new PageCommand("Enter", "Work on the rows that are left", (editor, _) => page.TakeLetters(editor, false), Key.Enter) { Word = "these rows" },
        new PageCommand("Esc", "Show all rows again", (editor, _) => page.ShowAll(editor), Key.Esc) { Word = "all rows" },
    ];

    /// <summary>A figure typed on a cell begins its new value.</summary>
    private static IEnumerable<EditorCommand> Digits(TablePage page) => Enumerable.Range(0, 10).Select(digit => new PageCommand(
        "0-9", "Type a new value into the cell", (editor, _) => page.Edit(editor, $"{digit}"), new Key((char)('0' + digit)))
    {
        Edits = true,
        Needs = (editor, _) => page.WhyNot(editor.Session),
    });

    private static string? NoMark(TablePage page, IEditor editor) => page.Marked(editor.Session).IsEmpty ? "No row is marked: Space marks one" : null;
}
