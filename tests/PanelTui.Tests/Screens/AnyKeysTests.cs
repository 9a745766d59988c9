using System.Globalization;
using PanelTui.Documents.Tests;
using PanelTui.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Whatever is pressed, clicked or resized, in whatever order: no fault, and undo gives the file back to the byte.</summary>
/// <remarks>PANELTUI_EVENTS=100000 presses as many in all; a seed that broke something stays here as a row.</remarks>
public sealed class AnyKeysTests : IDisposable
{
    private static readonly Key[] Walks =
    [
        Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.PageUp, Key.PageDown, Key.Home, Key.End, Key.Tab, Key.Tab.WithShift,
    ];

    private static readonly Key[] Does =
    [
        Key.Enter, Key.Enter, Key.Space, Key.Space, Key.Esc, Key.Esc, Key.D, Key.U, Key.R, Key.F, Key.F.WithShift, Key.Y, Key.C, Key.P, Key.T,
        Key.D1, Key.D2, Key.D3, new Key(':'), new Key('/'), new Key('?'), Key.F1, Key.Delete, Key.Backspace, Key.Z.WithCtrl, Key.C.WithShift,
        Key.P.WithShift, Key.L.WithCtrl, Key.F.WithCtrl, new Key('+'), new Key('-'), new Key('['), new Key(']'), Key.M, Key.D.WithCtrl, Key.D4, Key.D0,
        Key.A, Key.E, Key.G, Key.S, Key.V, Key.X, Key.B, Key.N, Key.O, Key.L, Key.H, Key.J, Key.K, Key.I, Key.W.WithShift, Key.F5, Key.F8,
    ];

    private static readonly string[] Texts =
        ["15 A", "20A", "1/2 hp", "3 kW", "{", "\"", "#", "é", "\u202e", "宽", "x: y", "- z", "   ", "20 V", "lamp"];

    private readonly TempFolder _folder = new();

    public static TheoryData<string, int> Seeds
    {
        get
        {
            var rows = new TheoryData<string, int>();
            foreach (var (example, at) in Directory.GetFiles(Path.Combine(SourceTree.Root, "examples"), "*.yaml").Order(StringComparer.Ordinal).Select((it, at) => (it, at)))
            {
                rows.Add(Path.GetFileName(example), 1000 + at);
            }

            return rows;
        }
    }

    private static int EventsInAll =>
        int.TryParse(Environment.GetEnvironmentVariable("PANELTUI_EVENTS"), NumberStyles.None, CultureInfo.InvariantCulture, out var many) ? many : 2_000;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Any_keys_in_any_order_break_nothing_and_undo_gives_the_file_back(string example, int seed)
    {
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "examples", example));
        var dice = new Dice(seed);
        for (var left = EventsInAll / Seeds.Count; left > 0; left -= 250) Play(text, dice, Math.Min(left, 250), $"{example} seed {seed}, {left} left");
    }

    public void Dispose() => _folder.Dispose();

    private void Play(string text, Dice dice, int events, string where)
    {
        var file = _folder.File("any.panel.yaml", text);
        var session = Session.Open(file).Session!;
        var pressed = new List<string>();
        using var program = new Driven(_ => new EditorScreen(session), 80, 24);
        try
        {
            for (var at = 0; at < events && !program.HasEnded; at++) Event(program, dice, pressed);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            throw new InvalidOperationException($"{where}: after {string.Join(' ', pressed.TakeLast(30))}", fault);
        }

        while (session.UndoTitle is not null) session.Undo();
        session.Now.Source.Text.ShouldBe(text, where);
        File.ReadAllText(file).ShouldBe(text, where);
    }

    private static void Event(Driven program, Dice dice, List<string> pressed)
    {
        switch (dice.Next(100))
        {
            case < 35:
                Press(program, dice.Any(Walks), pressed);
                break;
            case < 80:
                Press(program, dice.Any(Does), pressed);
                break;
            case < 86:
                var typed = dice.Any(Texts);
                pressed.Add($"'{typed}'");
                program.Type(typed);
                break;
            case < 88:
                pressed.Add("paste");
                program.Paste(dice.Any(Texts));
                break;
            case < 94:
                var (x, y) = (dice.Next(80), dice.Next(24));
                pressed.Add($"click {x},{y}");
                program.Click(x, y);
                break;
            case < 97:
                pressed.Add("drag");
                program.Drag(dice.Next(80), dice.Next(24), dice.Next(80), dice.Next(24));
                break;
            case < 98:
                pressed.Add("wheel");
                program.WheelDown(dice.Next(80), dice.Next(24));
                break;
            default:
                var (columns, rows) = (dice.Next(20, 140), dice.Next(5, 50));
                pressed.Add($"{columns}x{rows}");
                program.Resize(columns, rows);
                break;
        }
    }

    private static void Press(Driven program, Key key, List<string> pressed)
    {
        pressed.Add($"{key}");
        program.Press(key);
    }
}
