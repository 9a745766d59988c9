using System.Collections.Immutable;
using PanelTui.Commands;

namespace PanelTui.Pages;

/// <summary>A list over the face of the panel: rows to read, to choose among and to scroll, with keys of its own.</summary>
/// <remarks>Rows are made anew after every change, so a page holds no more than what was turned to or typed.</remarks>
internal abstract class Page
{
    /// <summary>The heading, one row.</summary>
    public abstract string Title(Session session);

    public abstract ImmutableArray<PageRow> Rows(Session session, int columns);

    /// <summary>Rows that stay in sight above those that scroll; none can be chosen.</summary>
    public virtual ImmutableArray<PageRow> Pinned(Session session, int columns) => [];

    /// <summary>What there is to say below of the chosen row, over as many rows as there are.</summary>
    public virtual string Detail(Session session, int chosen) => session.Message;

    /// <summary>Keys beyond those by which every page is walked and closed; they come first.</summary>
    public virtual ImmutableArray<EditorCommand> Commands => [];

    /// <summary>Whether ← and → turn to another of its kind.</summary>
    public virtual bool CanTurn => false;

    /// <summary>Whether letters go into <see cref="Typed"/>, so that no letter is a command.</summary>
    public virtual bool TakesText => false;

    /// <summary>Whether the figures stay in sight beside the page, where there is room for both.</summary>
    public virtual bool LeavesFigures => false;

    /// <summary>Takes text that was pasted as one piece; why it cannot, or nothing on success.</summary>
    public virtual string? Paste(IEditor editor, string text) => "Nothing can be pasted on this page";

    /// <summary>A form that was opened from here has been taken: with Enter, or with Tab to go on to the next.</summary>
    public virtual void FormTaken(IEditor editor, bool goesOn)
    {
        if (!goesOn) return;
        var row = Place.Chosen;
        editor.WalkPage(1);
        if (Place.Chosen != row) editor.ChooseRow();
    }

    /// <summary>A click so many columns from the left; whether it was elsewhere than the cursor.</summary>
    public virtual bool PointAt(int x) => false;

    /// <summary>Which of the rows that can be chosen the cursor is on, from 0; the rows below one that tell more of it count for it.</summary>
    /// <param name="rows">As they were shown last.</param>
    protected int ChosenAmong(ImmutableArray<PageRow> rows) => rows.Take(Place.Chosen + 1).Count(row => row.CanBeChosen) - 1;

    /// <summary>What has been typed to narrow the rows down.</summary>
    public string Typed { get; set; } = "";

    /// <summary>Which row stands on top and which is chosen.</summary>
    public PagePlace Place { get; set; } = PagePlace.Start;

    public virtual void Turn(Session session, int by)
    {
    }
}
