using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Editing;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>What a list of the file is on a page: its columns, how an entry is called, added and removed.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Columns">Key and width of each; what else an entry has follows them.</param>
/// <param name="EntryTitle">The heading of one entry's own page.</param>
/// <param name="New">The form for a new entry.</param>
/// <param name="Add">Adds an entry of these values, as they come from a spreadsheet.</param>
/// <param name="Remove">Removes an entry by its place in the list.</param>
/// <param name="Copy">Adds an entry below one that says all the same; nothing where two alike make no sense.</param>
internal sealed record EntryList(
    YamlPath List,
    Func<Session, string> Title,
    ImmutableArray<(string Key, int Columns)> Columns,
    Func<Session, YamlPath, string> EntryTitle,
    Func<Session, Form> New,
    Func<Snapshot, ImmutableArray<TypedValue>, Intended> Add,
    Func<Snapshot, int, Intended> Remove,
    Func<Snapshot, int, Intended>? Copy = null);

/// <summary>The entries of a list as a small table: Enter opens all keys of one.</summary>
internal sealed class EntriesPage : Page
{
    private readonly EntryList _list;

    public EntriesPage(EntryList list)
    {
        _list = list;
        Commands =
        [
            new PageCommand("Enter", "Edit the entry of the row", (editor, _) => editor.ChooseRow(), Key.Enter, Key.E, Key.F2)
            {
                Needs = (editor, _) => editor.CanChooseRow ? null : "There is nothing to edit",
                Word = "edit",
            },
            new PageCommand("n", "Add a new entry", (editor, _) => editor.Open(list.New(editor.Session)), Key.N, Key.InsertChar) { Word = "new" },
            new PageCommand("Del", "Remove the entry of the row", (editor, page) => Do(editor, page, list.Remove), Key.Delete, Key.D)
            {
                Needs = (editor, _) => editor.CanChooseRow ? null : "There is nothing to remove",
                Word = "remove",
            },
            new PageCommand("c", "Copy the entry of the row, with all that it says", (editor, page) => Do(editor, page, list.Copy!), Key.C)
            {
                Needs = (editor, _) => list.Copy is null ? "Two alike would say the same twice" : editor.CanChooseRow ? null : "There is nothing to copy",
                Word = "copy",
            },
            new PageCommand("C", "Copy all entries for a spreadsheet, or for another schedule", (editor, _) => CopyAll(editor), Key.C.WithShift)
            {
                Needs = (editor, _) => editor.CanChooseRow ? null : "There is nothing to copy",
            },
        ];
    }

    public override ImmutableArray<EditorCommand> Commands { get; }

    public override bool LeavesFigures => true;

    public override string Title(Session session) => _list.Title(session);

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var count = EntryText.CountOf(session, _list.List);
        return
        [
            new PageRow(DisplayText.Fit(Line(key => char.ToUpperInvariant(key[0]) + key[1..].Replace('_', ' ')), columns), Tone.Faint),
            .. count == 0 ? [new PageRow("None yet: n adds one.")] : Array.Empty<PageRow>(),
            .. Enumerable.Range(0, count).Select(index => Row(session, index, columns)),
        ];
    }

    public override string Detail(Session session, int chosen)
    {
        if (session.Message.Length > 0 || chosen < 1) return session.Message;
        return $"{_list.EntryTitle(session, _list.List.Then(chosen - 1))}: {EntryText.Rest(session, _list.List.Then(chosen - 1))}";
    }

    /// <summary>Each pasted line becomes an entry; all of them are one step of undo.</summary>
    public override string? Paste(IEditor editor, string text)
    {
        var session = editor.Session;
        var owner = FieldBook.PatternOf(_list.List.Then(0));
        var entries = PastedTable.Of(text, owner, [.. _list.Columns.Select(column => column.Key)]);
        if (entries.IsEmpty) return "There is nothing in what was pasted";
        var title = entries.Length == 1 ? "Paste one entry" : $"Paste {entries.Length} entries";
        return session.Do(snapshot => InOrder.Of(snapshot, title, entries.Select(entry => (Func<Snapshot, Intended>)(now => _list.Add(now, entry)))));
    }

    private PageRow Row(Session session, int index, int columns)
    {
        var entry = _list.List.Then(index);
        var told = Line(key => FieldValue.At(session.Now, entry.Then(key)) ?? "");
        var rest = EntryText.Rest(session, entry, _list.Columns.Select(column => column.Key));
        return new PageRow(DisplayText.Fit($"{told}{rest}", columns), Tone.Plain, editor => Open(editor, index));
    }

    private string Line(Func<string, string> text) =>
        string.Concat(_list.Columns.Select(column => $"{DisplayText.Fit(text(column.Key), column.Columns)} "));

    private void Open(IEditor editor, int index)
    {
        var count = EntryText.CountOf(editor.Session, _list.List);
        editor.Open(new FieldsPage([.. Enumerable.Range(0, count).Select(at => _list.List.Then(at))], index, _list.EntryTitle));
    }

    private static void Do(IEditor editor, Page page, Func<Snapshot, int, Intended> intent)
    {
        if (editor.Session.Do(snapshot => intent(snapshot, page.Place.Chosen - 1)) is { } refusal) editor.Session.Say($"! {refusal}");
    }

    /// <summary>The keys that any of the entries has, and what each has of them.</summary>
    private void CopyAll(IEditor editor)
    {
        var (now, count) = (editor.Session.Now, EntryText.CountOf(editor.Session, _list.List));
        var entries = Enumerable.Range(0, count).Select(index => _list.List.Then(index)).ToList();
        var keys = FieldBook.Of(FieldBook.PatternOf(_list.List.Then(0))).Select(field => field.Key).Where(key => entries.Exists(entry => FieldValue.IsThere(now, entry.Then(key)))).ToList();
        editor.CopyTable([[.. keys], .. entries.Select(entry => keys.Select(key => FieldValue.At(now, entry.Then(key)) ?? "").ToImmutableArray())]);
    }
}
