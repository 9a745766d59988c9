using System.Collections.Immutable;
using System.Drawing;
using PanelTui.Commands;
using PanelTui.Editing;
using PanelTui.Engine.Panels;
using PanelTui.Pages;
using PanelTui.Presentation;
using PanelTui.Views;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Screens;

/// <summary>The editor: the face of the panel, the live figures beside it, and below them what the cursor is on.</summary>
internal sealed class EditorScreen : Runnable, IEditor
{
    private readonly RunsView _title = new();
    private readonly RunsView _face = new() { CanFocus = true };
    private readonly RunsView _figures = new();
    private readonly RunsView _detail = new();
    private readonly RunsView _keys = new();
    private readonly RunsView _whole = new() { Visible = false };
    private readonly FormDesk _desk;
    private readonly Stack<Page> _pages = [];
    private EditorMode _mode = EditorMode.Face;
    private int _top;

    public EditorScreen(Session session)
    {
        Session = session;
        _desk = new FormDesk(session);
        Session.Changed += Refresh;
        AddCommand(Command.Cancel, () => true); // Esc would end the program otherwise.
        KeyBindings.Add(Key.Esc, Command.Cancel);
        Add(_title, _face, _figures, _detail, _keys, _desk.View, _whole);
        _face.Clicked += Click;
        _whole.Clicked += ClickRow;
        _desk.Changed += Refresh;
        _desk.Closed += EndForm;
        _desk.WantsNext += OpenBelow;
        _face.SetFocus();
    }

    public Session Session { get; }

    public EditorMode Mode => _mode switch
    {
        EditorMode.Face when Session.Hand is not null => EditorMode.Hand,
        EditorMode.Face when _pages.Count > 0 => EditorMode.Page,
        _ => _mode,
    };

    public Page? Page => _pages.TryPeek(out var page) ? page : null;

    public bool CanChooseRow => RowHere is not null;

    public int PageOfLines => Parts.Lines - 1;

    private PageRow? RowHere => Page is { } page && PageRows(page) is var rows && page.Place.Chosen >= 0 && page.Place.Chosen < rows.Length
        ? rows[page.Place.Chosen] is { CanBeChosen: true } row ? row : null
        : null;

    private EditorLayout Parts => EditorLayout.Of(Frame.Width, Frame.Height, Session.Face);

    public void EditHere() => Open(new EditCircuitForm(Session.Now, Session.Here!));

    public void PlaceHere(int poles, SpaceNumber at) => Open(new NewCircuitForm(at, poles));

    public void AskWhere() => Open(new ElsewhereForm(Session.Path));

    public void Open(Page page)
    {
        _pages.Push(page);
        page.Place = page.Place.Fitted(PageRows(page), Parts.Lines).InSight(Parts.Lines);
        Session.Say("");
    }

    public void ClosePage()
    {
        if (_pages.Count > 0) _pages.Pop();
        Session.Say("");
    }

    public void CloseAllPages()
    {
        _pages.Clear();
        Refresh();
    }

    public void WalkPage(int rows)
    {
        var page = Page!;
        page.Place = page.Place.By(rows, PageRows(page), Parts.Lines);
        Session.Say("");
    }

    public void ChooseRow() => RowHere?.Enter!(this);

    public void Enter(EditorMode mode)
    {
        _mode = mode;
        Refresh();
    }

    public void Leave() => App?.RequestStop(this);

    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        if (Session is null) return;
        Arrange();
        Refresh();
    }

    protected override bool OnKeyDown(Key key)
    {
        if (Mode == EditorMode.Page && PageTyping.Take(key, Page!))
        {
            Session.Say("");
            return true;
        }

        if (Mode == EditorMode.Form || CommandBook.For(key, this) is not { } command) return base.OnKeyDown(key);
        if (command.WhyNot(this) is { } why) Session.Say(why);
        else command.Run(this);
        return true;
    }

    private static void Place(View view, Rectangle at)
    {
        (view.X, view.Y, view.Width, view.Height) = (at.X, at.Y, at.Width, at.Height);
        view.Visible = !at.IsEmpty;
    }

    private void Arrange()
    {
        var layout = Parts;
        Place(_title, layout.Title);
        Place(_face, layout.Panel);
        Place(_figures, layout.Figures);
        Place(_detail, layout.Detail);
        Place(_keys, layout.Keys);
        (_desk.View.X, _desk.View.Y, _desk.View.Width, _desk.View.Height) = (layout.Detail.X, layout.Detail.Y, layout.Detail.Width, 1);
    }

    private void Refresh()
    {
        var layout = Parts;
        Place(_whole, layout.IsTooSmall ? layout.All : Page is null ? Rectangle.Empty : PlaceOf(Page, layout));
        if (layout.IsTooSmall)
        {
            _whole.Show([[new TextRun(EditorLayout.TooSmall)]]);
            return;
        }

        if (Page is { } page) _whole.Show(PageText.Of(page, Session, PlaceOf(page, layout).Width, layout.Body.Height));

        _top = layout.Scrolled(_top, Session.Face.LineOf(Session.Cursor));
        _title.Show([EditorRows.Title(Session, layout.Title.Width)]);
        _face.Show(EditorRows.Face(Session, LinesOf(layout), _top, layout.Panel.Height));
        _figures.Show(EditorRows.Figures(Session, layout.Figures.Width, layout.Figures.Height));
        _detail.Show(Mode == EditorMode.Form
            ? _desk.Rows(layout.Detail.Width)
            : Mode == EditorMode.Page
                ? PageDetail(layout.Detail.Width)
                : EditorRows.Detail(Session, Mode, layout.Detail.Width, layout.Detail.Height));
        _keys.Show([Mode == EditorMode.Form
            ? _desk.Keys(layout.Keys.Width)
            : EditorRows.Keys(this, layout.Keys.Width)]);
    }

    private FaceText LinesOf(EditorLayout layout) =>
        new(Session.Schedule, layout.Panel.Width, new CircuitLoads(Session.Assessment).On);

    private ImmutableArray<PageRow> PageRows(Page page) => page.Rows(Session, PlaceOf(page, Parts).Width - PageText.Margin);

    private static Rectangle PlaceOf(Page page, EditorLayout layout) => page.LeavesFigures ? layout.Panel : layout.Body;

    private ImmutableArray<ImmutableArray<TextRun>> PageDetail(int columns) =>
        [.. EditorRows.Lines(Page!.Detail(Session, Page.Place.Chosen), columns, Tone.Plain).Select(line => ImmutableArray.Create(line))];

    public void Open(Form form)
    {
        _mode = EditorMode.Form;
        _desk.Open(form, Parts.Detail.Width);
        Refresh();
    }

    private void EndForm()
    {
        _mode = EditorMode.Face;
        _face.SetFocus();
    }

    /// <summary>Opens the form of the row below, unless there is none.</summary>
    private void OpenBelow()
    {
        if (Page is not { } page) return;
        var row = page.Place.Chosen;
        WalkPage(1);
        if (page.Place.Chosen != row) ChooseRow();
    }

    /// <summary>A click goes there; a click on the cursor is Enter.</summary>
    private void Click(int x, int y)
    {
        var lines = Session.Face.Lines;
        if (Mode is not (EditorMode.Face or EditorMode.Hand) || y < 1 || _top + y - 1 >= lines.Length) return;
        if (lines[_top + y - 1].On(x < Parts.Panel.Width / 2) is not { } cell) return;
        if (cell.Space != Session.Cursor) Session.MoveCursor(cell.Space);
        else OnKeyDown(Key.Enter);
    }

    /// <summary>A click chooses a row; a click on the chosen one is Enter.</summary>
    private void ClickRow(int x, int y)
    {
        if (Mode != EditorMode.Page || y < 1) return;
        var (page, row) = (Page!, Page!.Place.Top + y - 1);
        if (row >= PageRows(page).Length || !PageRows(page)[row].CanBeChosen) return;
        if (row == page.Place.Chosen) ChooseRow();
        else page.Place = page.Place with { Chosen = row };
        Refresh();
    }
}
