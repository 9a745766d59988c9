using PanelTui.Engine.Panels;
using Terminal.Gui.Input;

namespace PanelTui.Screens;

/// <summary>What the mouse does on the face: a click goes there, a click on the cursor edits, a drag carries a breaker.</summary>
/// <param name="screen">Whose face it is.</param>
/// <param name="spaceAt">The space at a column and row of the face; nothing beside them.</param>
internal sealed class FaceMouse(EditorScreen screen, Func<int, int, SpaceNumber?> spaceAt)
{
    private SpaceNumber? _pressed;
    private bool _carries;

    public void Press(int x, int y)
    {
        _pressed = spaceAt(x, y);
        _carries = false;
    }

    /// <summary>A breaker that is dragged off its space is in the hand, and the figures show what the drop would do.</summary>
    public void Drag(int x, int y)
    {
        if (_pressed is not { } from || spaceAt(x, y) is not { } over || over == screen.Session.Cursor) return;
        var session = screen.Session;
        if (!_carries)
        {
            if (over == from || session.Hand is not null) return;
            session.MoveCursor(from);
            if (session.Here is not { } circuit) return;
            session.Hold(circuit);
            _carries = true;
        }

        session.MoveCursor(over);
    }

    public void Release(int x, int y)
    {
        var (from, over) = (_pressed, spaceAt(x, y));
        _pressed = null;
        if (over is { } space && from != over && !_carries && from is not null) Drag(from.Value, x, y);
        if (_carries) Drop();
        else if (over is { } at && from == at) Click(at);
    }

    private void Drag(SpaceNumber from, int x, int y)
    {
        _pressed = from;
        Drag(x, y);
        _pressed = null;
    }

    /// <summary>Where the breaker does not fit it stays in the hand, with the reason in sight.</summary>
    private void Drop()
    {
        _carries = false;
        if (screen.Session.Hand is { Plan.WhyNot: null }) screen.DoKey(Key.Enter);
    }

    private void Click(SpaceNumber at)
    {
        if (at == screen.Session.Cursor) screen.DoKey(Key.Enter);
        else screen.Session.MoveCursor(at);
    }
}
