using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Editing;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>What `print` would write, as text, before it is written: a sheet at a time, with all changes so far.</summary>
internal sealed class SheetPage : Page
{
    private int _kind;

    public override bool CanTurn => true;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("w", "Write this sheet to a file", (editor, _) => editor.Open(new SheetForm(Kind, editor.Session.Path)), Key.W) { Word = "write" },
    ];

    public override string Title(Session session)
    {
        var place = $"Sheet {_kind + 1} of {SheetKind.All.Length}, {Kind.Name}";
        return $"{place}: {SheetOf(session).Title}";
    }

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
        [.. TextFormat.Body(SheetOf(session), columns).Select(line => new PageRow(line))];

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : $"w writes it to a file, as does paneltui print {Kind.Name} {Path.GetFileName(session.Path)} -o {Kind.Name}.pdf";

    public override void Turn(Session session, int by)
    {
        _kind = (_kind + by + SheetKind.All.Length) % SheetKind.All.Length;
        Place = PagePlace.Start;
        session.Say("");
    }

    private SheetKind Kind => SheetKind.All[_kind];

    private Sheet SheetOf(Session session) => Kind.Make(session.Assessment, SheetChoices.Default);
}
