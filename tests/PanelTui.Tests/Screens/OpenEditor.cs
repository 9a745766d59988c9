using PanelTui.Screens;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>The editor open on a schedule of its own, driven by keys as a person would.</summary>
internal sealed class OpenEditor : IDisposable
{
    private readonly TempFolder _folder = new();
    private readonly Driven _program;

    /// <param name="text">The schedule.</param>
    /// <param name="columns">The width of the screen.</param>
    /// <param name="rows">The height of the screen.</param>
    /// <param name="screen">Makes the screen, where it is more than the editor alone.</param>
    public OpenEditor(
        string text = Shed.Text, int columns = 80, int rows = 24, Func<Session, IApplication, EditorScreen>? screen = null)
    {
        File = _folder.File("shed.panel.yaml", text);
        Session = Session.Open(File).Session!;
        _program = new Driven(app => screen?.Invoke(Session, app) ?? new EditorScreen(Session), columns, rows);
    }

    public string File { get; }

    public Session Session { get; }

    public string Screen => _program.Screen;

    public bool HasEnded => _program.HasEnded;

    public (int Bytes, int Writes) Cost => _program.Cost;

    public string OnDisk => System.IO.File.ReadAllText(File);

    /// <summary>Where the terminal's own cursor is shown, from 0.</summary>
    public System.Drawing.Point? CursorAt => _program.CursorAt;

    /// <summary>The row with the keys, at the bottom.</summary>
    public string Keys => _program.Screen.Split('\n')[^1];

    /// <summary>How many keys were pressed so far, beyond the text that was typed.</summary>
    public int Presses { get; private set; }

    public OpenEditor Press(params Key[] keys)
    {
        Presses += keys.Length;
        _program.Press(keys);
        return this;
    }

    public OpenEditor Type(string text)
    {
        _program.Type(text);
        return this;
    }

    /// <summary>Puts the cursor on a space by the arrows alone.</summary>
    public OpenEditor GoTo(string space)
    {
        Engine.Panels.SpaceNumber.TryParse(space, out var to).ShouldBeTrue();
        Press(Key.Home, to.IsLeft ? Key.CursorLeft : Key.CursorRight, Key.Home);
        for (var line = 0; line < 40 && Session.Cursor != to; line++) Press(Key.CursorDown);
        Session.Cursor.ShouldBe(to);
        return this;
    }

    public OpenEditor Paste(string text)
    {
        _program.Paste(text);
        return this;
    }

    public OpenEditor Resize(int columns, int rows)
    {
        _program.Resize(columns, rows);
        return this;
    }

    /// <summary>What was sent to the user's clipboard, oldest first.</summary>
    public IReadOnlyList<string> Copied => _program.Copied;

    /// <summary>Walks down a page to the row that begins so.</summary>
    public OpenEditor Choose(string row)
    {
        for (var down = 0; down < 80 && !Screen.Contains($"> {row}", StringComparison.Ordinal); down++) Press(Key.CursorDown);
        Screen.ShouldContain($"> {row}");
        return this;
    }

    /// <summary>Waits for what is worked out in the background to be on the screen.</summary>
    public OpenEditor Until(string shown)
    {
        _program.Until(program => program.Screen.Contains(shown, StringComparison.Ordinal));
        return this;
    }

    public OpenEditor Drag(int x, int y, int toX, int toY)
    {
        _program.Drag(x, y, toX, toY);
        return this;
    }

    public OpenEditor WheelDown(int x, int y)
    {
        _program.WheelDown(x, y);
        return this;
    }

    public OpenEditor Click(int x, int y)
    {
        _program.Click(x, y);
        return this;
    }

    public void Dispose()
    {
        _program.Dispose();
        _folder.Dispose();
    }
}
