using System.Drawing;
using PanelTui.Presentation;

namespace PanelTui.Screens;

/// <summary>Where the parts of the editor stand on a screen of this size.</summary>
internal sealed record EditorLayout
{
    public const string TooSmall = "The window is too small: 40 x 10 is needed.";

    /// <summary>Three rows for the circuit and what there is to say of it, one for the keys.</summary>
    private const int Below = 4;
    private const int FiguresBeside = 76;

    public required Rectangle All { get; init; }

    public required Rectangle Title { get; init; }

    /// <summary>Face and figures together.</summary>
    public required Rectangle Body { get; init; }

    public required Rectangle Panel { get; init; }

    public required Rectangle Figures { get; init; }

    /// <summary>The figures on one row, where there is no room beside the face.</summary>
    public required Rectangle Summary { get; init; }

    public required Rectangle Detail { get; init; }

    public required Rectangle Keys { get; init; }

    public bool IsTooSmall => All.Width < 40 || All.Height < 10;

    /// <summary>How many lines of the face are in sight, without its heading.</summary>
    public int Lines => Math.Max(1, Panel.Height - 1);

    /// <summary>Of the whole face, in sight or not.</summary>
    public required int LinesInAll { get; init; }

    /// <param name="more">Rows that a long message takes beyond the usual ones.</param>
    public static EditorLayout Of(int columns, int rows, Face face, int more = 0)
    {
        var below = Below + more;
        var beside = columns < FiguresBeside ? 0 : columns switch { >= 160 => 56, >= 110 => 36, _ => 25 };
        var summary = beside == 0 ? 1 : 0;
        var body = Math.Max(0, rows - below - 1 - summary);
        return new EditorLayout
        {
            All = new Rectangle(0, 0, columns, rows),
            Title = new Rectangle(0, 0, columns, 1),
            Body = new Rectangle(0, 1, columns, body),
            Panel = new Rectangle(0, 1, columns - beside, body),
            Figures = beside == 0 ? Rectangle.Empty : new Rectangle(columns - beside, 1, beside, body),
            Summary = summary == 0 ? Rectangle.Empty : new Rectangle(0, rows - below - 1, columns, 1),
            Detail = new Rectangle(0, rows - below, columns, below - 1),
            Keys = new Rectangle(0, rows - 1, columns, 1),
            LinesInAll = face.Lines.Length,
        };
    }

    /// <summary>The first line in sight, moved no more than it takes to have the cursor's line in sight.</summary>
    public int Scrolled(int top, int cursor) =>
        Math.Clamp(Math.Clamp(top, cursor - Lines + 1, Math.Max(cursor, 0)), 0, Math.Max(0, LinesInAll - Lines));
}
