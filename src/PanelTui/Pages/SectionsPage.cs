using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Editing;
using PanelTui.Engine;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Everything that stands in the file, by sections: a letter or Enter opens one.</summary>
internal sealed class SectionsPage : Page
{
    private const int TitleColumns = 20;

    private static readonly ImmutableArray<YamlPath> Mappings =
        [.. FieldBook.Of("").Where(field => field.Shape == FieldShape.Mapping).Select(field => YamlPath.Of(field.Key))];

    /// <summary>A letter for each, so that a section is two keys from the face.</summary>
    private static readonly ImmutableArray<(char Letter, string Key)> Letters =
    [
        ('p', "panel"), ('c', "code"), ('d', "demand"), ('f', "feeder"), ('t', "transfer"), ('s', "source"), ('b', "circuits"), ('n', "scenarios"),
        ('a', "accepted"), ('v', "schedule"),
    ];

    private readonly YamlPath? _circuit;

    /// <param name="circuit">The circuit under the cursor, by its place in the file.</param>
    public SectionsPage(int? circuit)
    {
        _circuit = circuit is { } ordinal ? Places.Circuit(ordinal) : null;
        Commands = [.. Entries.Select(entry => (EditorCommand)new PageCommand($"{entry.Letter}", entry.Title, (editor, _) => entry.Open(editor), new Key(entry.Letter)))];
    }

    public override ImmutableArray<EditorCommand> Commands { get; }

    public override bool LeavesFigures => true;

    private IEnumerable<(char Letter, string Title, YamlPath Path, Action<IEditor> Open)> Entries =>
    [
        .. Letters.Select(section => (section.Letter, FieldBook.Find(section.Key)!.Title, YamlPath.Of(section.Key), OpenerOf(YamlPath.Of(section.Key)))),
        .. _circuit is { } circuit
            ?
            [
                ('e', "Breaker under cursor", circuit, editor => editor.Open(new FieldsPage([circuit], 0, EntriesPages.CircuitTitle))),
                ('l', "Its loads", circuit.Then("loads"), editor => EntriesPages.Open(editor, circuit.Then("loads"))),
            ]
            : Array.Empty<(char, string, YamlPath, Action<IEditor>)>(),
    ];

    public override string Title(Session session) => "All that stands in the file";

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
    [
        .. Entries.Select(entry => new PageRow(
            [
                new TextRun($"{entry.Letter}  ", Tone.Strong),
                new TextRun(DisplayText.Fit(entry.Title, TitleColumns)),
                new TextRun(DisplayText.Fit($" {Summary(session, entry.Path)}", Math.Max(0, columns - TitleColumns - 3)), Tone.Faint),
            ],
            entry.Open)),
    ];

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : $"{FieldBook.At(Entries.ElementAt(Math.Max(0, chosen)).Path)?.Help ?? "All keys of the breaker under the cursor on the face"}.";

    private static string Summary(Session session, YamlPath path) => FieldBook.At(path)?.Shape switch
    {
        FieldShape.ListOfMappings => EntryText.Count(session, path),
        FieldShape.Value => FieldValue.At(session.Now, path) ?? "",
        FieldShape.Mapping or FieldShape.List or null => EntryText.Values(session, path),
        var shape => throw Unnamed.Of(shape),
    };

    private static Action<IEditor> OpenerOf(YamlPath path) => FieldBook.At(path)!.Shape switch
    {
        FieldShape.ListOfMappings => editor => EntriesPages.Open(editor, path),
        FieldShape.Mapping => editor => editor.Open(new FieldsPage(Mappings, Mappings.IndexOf(path))),
        FieldShape.Value or FieldShape.List => editor => editor.Open(new FieldForm(editor.Session, path)),
        var shape => throw Unnamed.Of(shape),
    };
}
