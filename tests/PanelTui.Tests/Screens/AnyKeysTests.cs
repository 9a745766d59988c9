using System.Globalization;
using System.Text.RegularExpressions;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Tests;
using PanelTui.Documents.Text;
using PanelTui.Pages;
using PanelTui.Screens;
using PanelTui.Views;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace PanelTui.Tests.Screens;

/// <summary>Whatever is pressed, clicked or resized, in whatever order: no fault, and undo gives the file back to the byte.</summary>
/// <remarks>PANELTUI_EVENTS=100000 presses as many in all; a seed that broke something stays here as a row.</remarks>
public sealed partial class AnyKeysTests : IDisposable
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
        Key.T.WithShift, Key.T.WithShift, new Key('='), new Key('"'), Key.W,
    ];

    /// <summary>Behind the name that a form for writing a file begins with, so that every file is in the test's own folder.</summary>
    private static readonly string[] Endings = ["2", "é", ".pdf", ".html", ".md", ".txt", ".csv", ".svg", " "];

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
        EditorScreen? screen = null;
        using var program = new Driven(_ => screen = new EditorScreen(session, dice.One(3) ? [Settling(text)] : []), 80, 24);
        try
        {
            for (var at = 0; at < events && !program.HasEnded; at++)
            {
                if (IsForAFile(screen!)) Write(program, dice, pressed);
                else Event(program, dice, pressed);
            }
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            throw new InvalidOperationException($"{where}: after {string.Join(' ', pressed.TakeLast(30))}", fault);
        }

        while (session.UndoTitle is not null) session.Undo();
        session.Now.Source.Text.ShouldBe(text, where);
        File.ReadAllText(file).ShouldBe(text, where);
    }

    /// <summary>The page that asks which side is right, where another program has given two names anew that we have given anew as well.</summary>
    private static SettlePage Settling(string text)
    {
        var merge = ScheduleMerge.Of(Renamed(text, "Before"), SourceText.FromString(text), Renamed(text, "Of another program"));
        merge.Conflicts.Length.ShouldBe(2);
        return new SettlePage(merge, null);
    }

    private static SourceText Renamed(string text, string name) => SourceText.FromString(Name().Replace(text, $"name: {name}", 2));

    [GeneratedRegex(@"\bname: [^,\n}]+")]
    private static partial Regex Name();

    private static bool IsForAFile(EditorScreen screen) => screen.SubViews.OfType<FormView>().Single().SubViews.OfType<Label>()
        .Any(label => label.Text.Trim() is "Write to" or "Save as");

    /// <summary>No other key: it could make a name of a file elsewhere.</summary>
    private static void Write(Driven program, Dice dice, List<string> pressed)
    {
        Press(program, dice.Any([Key.Enter, Key.Esc, Key.End]), pressed);
        if (pressed[^1] != $"{Key.End}") return;
        pressed.Add("an ending");
        program.Type(dice.Any(Endings));
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
            case < 85:
                var typed = dice.Any(Texts);
                pressed.Add($"'{typed}'");
                program.Type(typed);
                break;
            case < 88:
                pressed.Add("paste");
                program.Paste(dice.One(2) ? dice.Any(Texts) : TableDice.Table(dice));
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
