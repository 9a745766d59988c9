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

/// <summary>Every key of one section with its value; those that are not set are faint and say what may stand there.</summary>
internal sealed class FieldsPage : Page
{
    private const int TitleColumns = 23;
    private readonly Func<Session, string> _title;
    private readonly ImmutableArray<YamlPath> _kin;
    private int _at;

    /// <param name="kin">The sections that ← and → turn to, this one among them.</param>
    /// <param name="at">Which of them is shown.</param>
    /// <param name="title">What they are called, where the format's name for the section would not do.</param>
    public FieldsPage(ImmutableArray<YamlPath> kin, int at = 0, Func<Session, YamlPath, string>? title = null)
    {
        (_kin, _at) = (kin, at);
        _title = session => title?.Invoke(session, Section) ?? FieldBook.At(Section)!.Title;
        Commands =
        [
            new PageCommand("Enter", "Edit the value of the row", (editor, _) => editor.ChooseRow(), Key.Enter, Key.E, Key.F2) { Word = "edit" },
            new PageCommand("Del", "Clear the value of the row", (editor, _) => Clear(editor, Here.Path), Key.Delete, Key.D, Key.Backspace)
            {
                Needs = (editor, _) => FieldValue.IsThere(editor.Session.Now, Here.Path) ? null : $"{Here.Field.Title} is not set",
                Word = "clear",
            },
            new PageCommand("D", "Remove the whole section", (editor, _) => Clear(editor, Section), Key.D.WithShift)
            {
                Needs = (editor, _) => FieldValue.IsThere(editor.Session.Now, Section) ? null : "The section is not in the file",
            },
            .. Digits,
        ];
    }

    public override ImmutableArray<EditorCommand> Commands { get; }

    public override bool LeavesFigures => true;

    public override bool CanTurn => _kin.Length > 1;

    /// <summary>A figure typed on a row begins its new value.</summary>
    private IEnumerable<EditorCommand> Digits => Enumerable.Range(0, 10).Select(digit => new PageCommand(
        "0-9",
        "Type a new value on the row",
        (editor, _) => editor.Open(new FieldForm(editor.Session, EditedAt(Here), $"{digit}")),
        new Key((char)('0' + digit)))
    {
        Needs = (_, _) => Here.Field.Shape == FieldShape.ListOfMappings ? HintOf(Here.Field) : null,
    });

    private YamlPath Section => _kin[_at];

    private FieldPlace Here => FieldPlaces.Of(Section)[Math.Max(0, Place.Chosen)];

    public override string Title(Session session) => _title(session);

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
        [.. FieldPlaces.Of(Section).Select(place => Row(session, place, columns))];

    public override string Detail(Session session, int chosen)
    {
        if (session.Message.Length > 0) return session.Message;
        var field = FieldPlaces.Of(Section)[Math.Max(0, chosen)].Field;
        var without = field.IsRequired ? " Needed." : field.Default is { } value ? $" Without it: {value}." : "";
        var example = field.Example.Length is > 0 and < 30 && field.Allowed.IsEmpty ? $", e.g. {field.Example}" : "";
        var expected = HintOf(field) ?? $"{field.Expected}{example}";
        return $"{field.Title}: {char.ToLowerInvariant(field.Help[0])}{field.Help[1..]}; {expected}.{without}";
    }

    public override void Turn(Session session, int by)
    {
        _at = (_at + by + _kin.Length) % _kin.Length;
        Place = PagePlace.Start;
        session.Say("");
    }

    private static void Clear(IEditor editor, YamlPath path)
    {
        if (editor.Session.Do(snapshot => SetField.In(snapshot, path, "")) is { } refusal) editor.Session.Say($"! {refusal}");
    }

    private static PageRow Row(Session session, FieldPlace place, int columns)
    {
        var title = DisplayText.Fit(place.Field.Title, TitleColumns);
        var room = Math.Max(0, columns - TitleColumns);
        if (place.Field.Shape == FieldShape.ListOfMappings)
            return new PageRow([new TextRun(title), new TextRun(DisplayText.Fit(EntryText.Count(session, place.Path), room))], editor => EntriesPages.Open(editor, place.Path));
        var isThere = FieldValue.IsThere(session.Now, place.Path);
        var value = FieldValue.At(session.Now, place.Path) ?? (isThere ? "" : NotSet(place.Field));
        return new PageRow(
            [new TextRun(title, isThere ? Tone.Plain : Tone.Faint), new TextRun(DisplayText.Fit(value, room), isThere ? Tone.Strong : Tone.Faint)],
            editor => editor.Open(new FieldForm(editor.Session, EditedAt(place))));
    }

    /// <summary>A section within the section is begun by the first key that it cannot be without.</summary>
    private static YamlPath EditedAt(FieldPlace place)
    {
        if (place.Field.Shape != FieldShape.Mapping) return place.Path;
        var fields = FieldBook.Of(place.Field.Path);
        return place.Path.Then((fields.FirstOrDefault(field => field.IsRequired) ?? fields[0]).Key);
    }

    /// <summary>What Enter does on a section; null for a field with a value of its own.</summary>
    private static string? HintOf(Field field) => field.Shape switch
    {
        FieldShape.ListOfMappings => "Enter opens the list",
        FieldShape.Mapping => "Enter begins it",
        FieldShape.Value or FieldShape.List => null,
        _ => throw Unnamed.Of(field.Shape),
    };

    private static string NotSet(Field field)
    {
        if (field.Shape == FieldShape.Mapping) return "· none";
        if (!field.Allowed.IsEmpty && !field.IsFreeText) return $"· {string.Join(", ", field.Allowed)}";
        return field.Unit.Length > 0 ? $"· in {field.Unit}" : $"· {field.Expected}";
    }
}
