using PanelTui.Documents.Tests;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Something at random on the table of breakers: a paste, or an edit of many rows; all pages but the table are closed after it.</summary>
internal static class TableDice
{
    private static readonly string[] Cells =
        ["", "1", "2", "5", "17a", "20 A", "lots", "Yard", "a: b", "\"", "yes", "no", "12 AWG Cu", "60 ft", "lighting 90 W", "motor 1 hp; other 20 VA", "gfci", "é\u202e", "garage, outdoors"];

    private static readonly string[] Headings = ["space", "breaker", "Name", "Load", "poles", "VA", "Wire", "standby", "nothing"];

    private static readonly Key[] Edits = [new('+'), new('-'), Key.Space, new('"'), Key.G, Key.O, Key.Delete, Key.Backspace, Key.S, Key.C.WithShift];

    /// <summary>Whether all that was done is one step of undo.</summary>
    public static bool Do(OpenEditor editor, Dice dice)
    {
        var isOne = true;
        switch (dice.Next(4))
        {
            case 0:
                editor.Paste(Table(dice));
                isOne = dice.One(2);
                if (!isOne) editor.Press(Key.Delete, Key.CursorRight, Key.Enter).Type(dice.Any(Cells)).Press(Key.Enter, Key.Esc, Key.T);
                break;
            case 1:
            case 2:
                isOne = editor.Press(dice.Any([new Key('='), Key.E])).Keys.Contains("give up", StringComparison.Ordinal);
                editor.Type(dice.Any(Cells)).Press(dice.Any([Key.Enter, Key.Tab]));
                break;
            default:
                editor.Press(dice.Any(Edits));
                break;
        }

        for (var level = 0; level < 6 && !editor.Screen.Contains(" All breakers: ", StringComparison.Ordinal); level++) editor.Press(Key.Esc);
        while (editor.Keys.Contains("give up", StringComparison.Ordinal)) editor.Press(Key.Esc);
        if (!editor.Screen.Contains(" All breakers: ", StringComparison.Ordinal)) editor.Press(Key.Esc, Key.Esc, Key.T.WithShift);
        return isOne;
    }

    public static string Table(Dice dice)
    {
        var columns = dice.Next(1, 6);
        var rows = Enumerable.Range(0, dice.Next(1, 5)).Select(_ => string.Join('\t', Enumerable.Range(0, columns).Select(_ => dice.Any(Cells))));
        string[] head = dice.One(2) ? [string.Join('\t', Enumerable.Range(0, columns).Select(_ => dice.Any(Headings)))] : [];
        return string.Join('\n', head.Concat(rows));
    }
}
