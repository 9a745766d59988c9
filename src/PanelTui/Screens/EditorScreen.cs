using System.Collections.Immutable;
using System.Drawing;
using System.Text;
using PanelTui.Commands;
using PanelTui.Editing;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Pages;
using PanelTui.Presentation;
using PanelTui.Terminal;
using PanelTui.Views;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Screens;

/// <summary>The editor: the face of the panel, the live figures beside it, and below them what the cursor is on.</summary>
internal sealed class EditorScreen : Runnable, IEditor
{
    private const int WheelRows = 3;
    private readonly RunsView _title = new();
    private readonly RunsView _face = new() { CanFocus = true };
    private readonly RunsView _figures = new();
    private readonly RunsView _summary = new();
    private readonly RunsView _detail = new();
    private readonly RunsView _keys = new();
    private readonly RunsView _whole = new() { Visible = false };
    private readonly FormDesk _desk;
    private readonly OpenPages _pages;
    private EditorMode _mode = EditorMode.Face;
    private int _top;
    private int _more;

    /// <param name="session">What is edited.</param>
    /// <param name="questions">Asked before anything else, the last one first.</param>
    public EditorScreen(Session session, ImmutableArray<Page> questions = default)
    {
        Session = session;
        _desk = new FormDesk(session);
        _pages = new OpenPages(session, page => PlaceOf(page, Parts).Size);
        Session.Changed += Refresh;
        Session.Pace.Announced += ShowBusy;
        AddCommand(Command.Cancel, () => true); // Esc would end the program otherwise.
        KeyBindings.Add(Key.Esc, Command.Cancel);
        Add(_title, _face, _figures, _summary, _detail, _keys, _desk.View, _whole);
        var mouse = new FaceMouse(this, SpaceAt);
        _face.Pressed += mouse.Press;
        _face.Dragged += mouse.Drag;
        _face.Released += mouse.Release;
        _whole.Released += ClickRow;
        _whole.Wheeled += by => WalkPage(by * WheelRows);
        _face.Wheeled += by => DoKey(by < 0 ? Key.CursorUp : Key.CursorDown);
        _figures.Released += (_, row) => ClickFigure(row);
        _desk.Changed += Refresh;
        _desk.Closed += EndForm;
        _desk.Taken += goesOn => Page?.FormTaken(this, goesOn);
        _face.TextPasted += Paste;
        foreach (var question in questions.IsDefault ? [] : questions) _pages.Open(question);
        _face.SetFocus();
    }

    public Session Session { get; }

    public EditorMode Mode => _mode switch
    {
        EditorMode.Face when Session.Hand is not null => EditorMode.Hand,
        EditorMode.Face when Page is not null => EditorMode.Page,
        EditorMode.None or EditorMode.Face or EditorMode.Hand or EditorMode.Form or EditorMode.Leaving
            or EditorMode.Page => _mode,
        _ => throw Unnamed.Of(_mode),
    };

    public Page? Page => _pages.Top;
    public bool CanChooseRow => _pages.Chosen is not null;
    public int PageOfLines => Parts.Lines - 1;

    private EditorLayout Parts => EditorLayout.Of(Frame.Width, Frame.Height, Session.Face, _more);

    public void Open(Page page)
    {
        _pages.Open(page);
        Session.Say("");
    }

    public void ClosePage()
    {
        _pages.Close();
        Session.Say("");
    }

    public void CloseAllPages()
    {
        _pages.CloseAll();
        Refresh();
    }

    public void WalkPage(int rows)
    {
        _pages.Walk(rows);
        Session.Say("");
    }

    public void ChooseRow() => _pages.Chosen?.Enter!(this);

    public void CopyText(string text) => Clipboard.Send(App, Session, [.. text.Split('\n').Select(line => DisplayText.Clean(line))]);

    public void CopyTable(ImmutableArray<ImmutableArray<string>> rows) => Clipboard.Send(App, Session, [.. rows.Select(SpreadsheetText.Line)]);

    public void Enter(EditorMode mode)
    {
        _mode = mode;
        Refresh();
    }

    public void Repaint() => TerminalHost.Repaint(App!);

    public void Suspend() => TerminalHost.Suspend(App!);

    public void Later(Action action) => App?.Invoke(action);
    public void Leave() => App?.RequestStop(this);

    /// <summary>The parts cover it all, and paint what has changed of themselves.</summary>
    protected override bool OnClearingViewport() => true;

    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        if (Session is null) return;
        Arrange();
        Refresh();
    }

    public bool DoKey(Key key) => OnKeyDown(key);

    protected override bool OnKeyDown(Key key)
    {
        if (Mode == EditorMode.Page && PageTyping.Take(key, Page!))
        {
            Session.Say("");
            return true;
        }

        if (Mode == EditorMode.Form) return base.OnKeyDown(key);
        if (CommandBook.For(key, this) is not { } command) return Unknown(key) || base.OnKeyDown(key);
        if (command.WhyNotNow(this) is { } why) Session.Say(why);
        else command.Run(this);
        return true;
    }

    /// <summary>A letter that means nothing here is not passed over in silence.</summary>
    private bool Unknown(Key key)
    {
        if (Mode is not (EditorMode.Face or EditorMode.Page) || key.IsCtrl || key.IsAlt || !Rune.IsLetterOrDigit(key.AsRune)) return false;
        Session.Say($"{key.AsRune} does nothing here; ? tells the keys");
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
        Place(_summary, layout.Summary);
        Place(_detail, layout.Detail);
        Place(_keys, layout.Keys);
        (_desk.View.X, _desk.View.Y, _desk.View.Width, _desk.View.Height) = (layout.Detail.X, layout.Detail.Y, layout.Detail.Width, 1);
    }

    private void Refresh()
    {
        var more = Mode == EditorMode.Face ? EditorRows.MoreFor(Session.Message, Frame.Width, Frame.Height) : 0;
        if (more != _more)
        {
            _more = more;
            Arrange();
        }

        var layout = Parts;
        Place(_whole, layout.IsTooSmall ? layout.All : Page is null ? Rectangle.Empty : PlaceOf(Page, layout));
        if (layout.IsTooSmall)
        {
            _whole.Show(EditorRows.TooSmall(Frame.Width, Frame.Height));
            return;
        }

        if (Page is not null) _whole.Show(_pages.Text);

        _top = layout.Scrolled(_top, Session.Face.LineOf(Session.Cursor));
        _title.Show([EditorRows.Title(Session, layout.Title.Width)]);
        _face.Show(EditorRows.Face(Session, LinesOf(layout), _top, layout.Panel.Height));
        _figures.Show(EditorRows.Figures(Session, layout.Figures.Width, layout.Figures.Height));
        _summary.Show([SummaryRow.Of(Session.Assessment, Session.Preview?.Assessment, layout.Summary.Width)]);
        _detail.Show(Mode == EditorMode.Form
            ? _desk.Rows(layout.Detail.Width)
            : Mode == EditorMode.Page
                ? EditorRows.PageDetail(Page!, Session, layout.Detail.Width)
                : EditorRows.Detail(Session, Mode, layout.Detail.Width, layout.Detail.Height));
        _keys.Show([Mode == EditorMode.Form ? _desk.Keys(layout.Keys.Width) : EditorRows.Keys(this, layout.Keys.Width)]);
        StandAt(Page is null ? _face : _whole);
    }

    /// <summary>The terminal's own cursor stands where ours is, for those who follow it by touch or by ear.</summary>
    private void StandAt(RunsView view) => _face.Cursor = view.CursorAt is { } at
        ? new Cursor { Position = view.ViewportToScreen(at), Style = CursorStyle.Default }
        : new Cursor { Position = null };

    /// <summary>What the editor is busy with stands in the place of the keys, which wait; it is on the terminal before the work goes on.</summary>
    private void ShowBusy(string? what)
    {
        if (what is null || App is null || Parts.IsTooSmall) return;
        _keys.Show([[new TextRun($" {what}", Tone.Strong)]]);
        TerminalHost.ShowNow(App);
    }

    private FaceText LinesOf(EditorLayout layout) =>
        new(Session.Schedule, layout.Panel.Width, new CircuitLoads(Session.Assessment).On);

    private static Rectangle PlaceOf(Page page, EditorLayout layout) => page.LeavesFigures ? layout.Panel : layout.Body;

    public void Open(Form form)
    {
        if (form.Changes && Session.WhyNoEdit is { } why)
        {
            Session.Say(why);
            return;
        }

        _mode = EditorMode.Form;
        _desk.Open(form, Parts.Detail.Width);
        Refresh();
    }

    private void EndForm()
    {
        _mode = EditorMode.Face;
        _face.SetFocus();
    }

    private void Paste(string text)
    {
        var refusal = Page is { } page ? page.Paste(this, text) : "Rows of a spreadsheet are pasted on the table of breakers: T opens it";
        if (refusal is not null) Session.Say(refusal);
    }

    private SpaceNumber? SpaceAt(int x, int y)
    {
        var lines = Session.Face.Lines;
        return Mode is EditorMode.Face or EditorMode.Hand && y >= 1 && _top + y - 1 < lines.Length
            ? lines[_top + y - 1].On(x < Parts.Panel.Width / 2)?.Space
            : null;
    }

    /// <summary>A click on a figure asks how it came about; one on the findings lists them.</summary>
    private void ClickFigure(int row)
    {
        if (Mode != EditorMode.Face) return;
        var rows = EditorRows.FigureList(Session, Parts.Figures.Width, Parts.Figures.Height);
        if (row >= rows.Length) return;
        if (rows[row].Figure is { } figure) Open(new WhyPage(figure));
        else if (rows[row] != FigureRow.Gap) Open(new FindingsPage());
    }

    /// <summary>A click chooses a row; a click on the chosen one is Enter.</summary>
    private void ClickRow(int x, int y)
    {
        if (Mode != EditorMode.Page) return;
        var isElsewhere = Page!.PointAt(x - PageText.Margin);
        if (!_pages.Choose(y - 1) && !isElsewhere) ChooseRow();
        Refresh();
    }
}
