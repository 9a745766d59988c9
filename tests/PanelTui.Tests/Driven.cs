using System.Drawing;
using System.Globalization;
using System.Text;
using PanelTui.Presentation;
using PanelTui.Tests.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Views;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Tests;

/// <summary>The whole program without a terminal: press, type, click; then look at the screen.</summary>
/// <remarks>
/// The program runs on a thread of its own, on a clock of its own, through the same loop, key filter and output as on
/// a real terminal. Each step returns when the program has nothing left to do, and checks that the bytes sent so
/// far paint exactly what was drawn. An exception in the program comes out of the step that caused it.
/// </remarks>
public sealed class Driven : IDisposable
{
    private readonly DrivenApplication _program;
    private readonly bool _ascii;

    /// <param name="build">Makes the main window, as for the real terminal.</param>
    /// <param name="columns">The width of the screen.</param>
    /// <param name="rows">The height of the screen.</param>
    /// <param name="ascii">A terminal that knows ASCII alone: look at <see cref="Painted"/>.</param>
    public Driven(Func<IApplication, Runnable> build, int columns = 80, int rows = 24, bool ascii = false)
    {
        _ascii = ascii;
        _program = new DrivenApplication(build, new Size(columns, rows), ascii);
    }

    public IApplication App => _program.App;

    /// <summary>The main window has been closed.</summary>
    public bool HasEnded => _program.HasEnded;

    /// <summary>The rows of the screen, without the blanks at their ends.</summary>
    public string Screen => string.Join('\n', Enumerable.Range(0, _program.Cells.Rows).Select(Row)).TrimEnd();

    /// <summary>What the terminal shows, painted from the bytes it was sent; on an ASCII terminal other letters than drawn.</summary>
    public string Painted => _program.Terminal.Text;

    /// <summary>Where the cursor is shown, counted from 0 at the top left; nothing when it is hidden.</summary>
    public Point? CursorAt => _program.Terminal.Cursor;

    /// <summary>What the last step cost on the line: bytes, and writes.</summary>
    public (int Bytes, int Writes) Cost { get; private set; }

    /// <summary>What was copied to the user's clipboard through the terminal, oldest first.</summary>
    public IReadOnlyList<string> Copied => _program.Terminal.Copied;

    public Driven Press(params Key[] keys)
    {
        foreach (var key in keys)
            Do(app => app.InjectKey(key));
        return this;
    }

    /// <summary>Types letter by letter.</summary>
    public Driven Type(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        foreach (var rune in text.EnumerateRunes())
            Press(new Key(rune.Value));
        return this;
    }

    public Driven Click(int x, int y) => Mouse(0, x, y, 'M').Mouse(0, x, y, 'm', isNew: false);

    public Driven DoubleClick(int x, int y) =>
        Click(x, y).Mouse(0, x, y, 'M', isNew: false).Mouse(0, x, y, 'm', isNew: false);

    /// <summary>Presses, moves and lets go, as a person does with a breaker in hand.</summary>
    public Driven Drag(int x, int y, int toX, int toY) =>
        Mouse(0, x, y, 'M').Mouse(32, toX, toY, 'M', isNew: false).Mouse(0, toX, toY, 'm', isNew: false);

    public Driven WheelUp(int x, int y) => Mouse(64, x, y, 'M');

    public Driven WheelDown(int x, int y) => Mouse(65, x, y, 'M');

    /// <summary>What a terminal sends, byte for byte, through the key filter; then the patience for a cut key runs out.</summary>
    public Driven Bytes(string sent) => Do(_ => _program.Receive(sent)).Pass(TimeSpan.FromSeconds(2));

    /// <summary>Pastes as a terminal does, marked as pasted.</summary>
    public Driven Paste(string text) => Bytes($"\e[200~{text}\e[201~");

    public Driven Resize(int columns, int rows) =>
        Do(_ => _program.Size = new Size(columns, rows)).Pass(TimeSpan.FromSeconds(1));

    /// <summary>Lets time go by; what was to happen in it happens.</summary>
    public Driven Pass(TimeSpan time) => Do(_ => _program.Pass(time));

    /// <summary>Waits for work in the background to come back to the screen.</summary>
    public Driven Until(Func<Driven, bool> isSo)
    {
        ArgumentNullException.ThrowIfNull(isSo);
        while (!isSo(this))
        {
            _program.AwaitPost();
            Do(_ => { });
        }

        return this;
    }

    /// <summary>Does something on the thread of the screen.</summary>
    public Driven Do(Action<IApplication> step)
    {
        _program.Terminal.Start();
        _program.Step(() => step(App));
        Cost = _program.Terminal.Cost;
        if (!_ascii && !HasEnded)
            Painted.ShouldBe(Screen, "what the bytes paint is not what was drawn");
        return this;
    }

    public string Row(int y)
    {
        var row = new StringBuilder();
        for (var x = 0; x < _program.Cells.Cols; x++)
        {
            var grapheme = _program.Cells.Contents![y, x].Grapheme;
            row.Append(string.IsNullOrEmpty(grapheme) ? " " : grapheme);
            if (DisplayText.Width(grapheme ?? "") > 1)
                x++;
        }

        return row.ToString().TrimEnd();
    }

    public Attribute AttributeAt(int x, int y) => _program.Cells.Contents![y, x].Attribute!.Value;

    public void Dispose() => _program.Dispose();

    private Driven Mouse(int button, int x, int y, char kind, bool isNew = true)
    {
        if (isNew)
            Pass(TimeSpan.FromSeconds(1)); // not the second half of a double click
        return Do(_ => _program.Receive(string.Create(CultureInfo.InvariantCulture, $"\e[<{button};{x + 1};{y + 1}{kind}")));
    }
}
