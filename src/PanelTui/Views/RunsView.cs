using System.Collections.Immutable;
using System.Drawing;
using PanelTui.Engine;
using PanelTui.Presentation;
using PanelTui.Terminal;
using Terminal.Gui.Input;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Views;

/// <summary>Shows rows of text as they are given, and paints again only the rows that differ from the last ones.</summary>
internal sealed class RunsView : RowView
{
    private ImmutableArray<ImmutableArray<TextRun>> _rows = [];

    /// <summary>Column and row, from 0, where the mouse was pressed.</summary>
    public event Action<int, int>? Pressed;

    /// <summary>Where the mouse is while it is held.</summary>
    public event Action<int, int>? Dragged;

    /// <summary>Where the mouse let go.</summary>
    public event Action<int, int>? Released;

    /// <summary>The wheel turned: -1 up, 1 down.</summary>
    public event Action<int>? Wheeled;

    /// <summary>Text came from outside as one piece, tabs and line ends in it.</summary>
    public event Action<string>? TextPasted;

    /// <summary>Where the first run under the cursor begins, from 0; nothing where none is.</summary>
    public Point? CursorAt
    {
        get
        {
            for (var row = 0; row < _rows.Length; row++)
            {
                var before = _rows[row].TakeWhile(run => run.Tone != Tone.Cursor).ToList();
                if (before.Count < _rows[row].Length) return new Point(before.Sum(run => DisplayText.Width(run.Text)), row);
            }

            return null;
        }
    }

    public void Show(ImmutableArray<ImmutableArray<TextRun>> rows)
    {
        var before = _rows;
        _rows = rows;
        for (var row = 0; row < Math.Max(before.Length, rows.Length); row++)
        {
            if (row >= before.Length || row >= rows.Length || !before[row].SequenceEqual(rows[row])) TouchRow(row);
        }
    }

    /// <summary>The key filter has taken out all but tabs and line ends, which a table needs.</summary>
    protected override string OnSanitizingPaste(string text) => text;

    protected override bool OnPaste(string text)
    {
        TextPasted?.Invoke(text);
        return true;
    }

    protected override void PaintRow(int row, int width)
    {
        var room = width;
        foreach (var run in row < _rows.Length ? _rows[row] : [])
        {
            var columns = Math.Min(room, DisplayText.Width(run.Text));
            SetAttribute(LookOf(run.Tone));
            AddStr(DisplayText.Fit(run.Text, columns));
            room -= columns;
        }

        SetAttribute(Look.Plain);
        AddStr(new string(' ', room));
    }

    private static Attribute LookOf(Tone tone) => tone switch
    {
        Tone.Strong => Look.Strong,
        Tone.Faint => Look.Faint,
        Tone.Cursor => Look.Cursor,
        Tone.Landing => Look.Mark,
        Tone.Warning => Look.Warning,
        Tone.Error => Look.Error,
        Tone.LegA => Look.Leg('A'),
        Tone.LegB => Look.Leg('B'),
        Tone.LegC => Look.Leg('C'),
        Tone.Plain => Look.Plain,
        _ => throw Unnamed.Of(tone),
    };

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at) return false;
        if (mouse.Flags.HasFlag(MouseFlags.WheeledUp)) Wheeled?.Invoke(-1);
        else if (mouse.Flags.HasFlag(MouseFlags.WheeledDown)) Wheeled?.Invoke(1);
        else if (mouse.Flags.HasFlag(MouseFlags.LeftButtonReleased)) Released?.Invoke(at.X, at.Y);
        else if (mouse.Flags.HasFlag(MouseFlags.LeftButtonPressed) && mouse.Flags.HasFlag(MouseFlags.PositionReport)) Dragged?.Invoke(at.X, at.Y);
        else if (mouse.Flags.HasFlag(MouseFlags.LeftButtonPressed)) Pressed?.Invoke(at.X, at.Y);
        return true;
    }
}
