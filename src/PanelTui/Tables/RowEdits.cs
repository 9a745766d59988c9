using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>What is done to several rows of the table at once, each as one step of undo.</summary>
internal static class RowEdits
{
    /// <summary>Makes an intent; a refusal, or that nothing had to be changed, is said.</summary>
    public static void Do(IEditor editor, Func<Snapshot, Intended> intent)
    {
        var (session, before) = (editor.Session, editor.Session.Now);
        if (session.Do(intent) is { } refusal) session.Say($"! {refusal}");
        else if (session.Now.Source.Text == before.Source.Text) session.Say("Nothing to change: the file says so already");
    }

    /// <summary>Gives rows the value that a row has in a column.</summary>
    public static void Set(IEditor editor, CircuitColumn column, ImmutableArray<CircuitRow> rows, CircuitRow from)
    {
        if (rows.Select(column.WhyNot).FirstOrDefault(reason => reason is not null) is { } why) editor.Session.Say(why);
        else Do(editor, snapshot => column.Set(snapshot, Ordinals(rows), column.Value(from)));
    }

    /// <summary>Off the standby source, or on it where all of them are off.</summary>
    public static void Switch(IEditor editor, ImmutableArray<CircuitRow> rows)
    {
        var isOff = rows.Any(row => row.Circuit.Standby);
        var turned = rows.Where(row => row.Circuit.Standby == isOff).ToList();
        var what = turned is [var one] ? CircuitText.NameOf(one.Circuit) : $"{turned.Count} breakers";
        Do(editor, snapshot => SetField.In(
            snapshot,
            isOff ? $"Take {what} off standby" : $"Put {what} on standby",
            [.. turned.Select(row => (Places.Circuit(row.Circuit.Ordinal).Then("standby"), isOff ? "no" : "yes"))]));
    }

    public static void Remove(IEditor editor, ImmutableArray<CircuitRow> rows) => Do(editor, snapshot => RemoveCircuits.In(snapshot, Ordinals(rows)));

    public static void Clear(IEditor editor, CircuitColumn column, CircuitRow row) => Do(editor, snapshot => column.Set(snapshot, [row.Circuit.Ordinal], ""));

    /// <summary>The keys that any of the rows has, and what each row has of them, for a spreadsheet or another schedule.</summary>
    public static void Copy(IEditor editor, ImmutableArray<CircuitRow> rows)
    {
        var columns = CircuitColumns.Copied.Where(column => rows.Any(row => column.Value(row).Length > 0)).ToList();
        editor.CopyTable([[.. columns.Select(column => column.Key!)], .. rows.Select(row => columns.Select(column => column.Value(row)).ToImmutableArray())]);
    }

    private static ImmutableArray<int> Ordinals(ImmutableArray<CircuitRow> rows) => [.. rows.Select(row => row.Circuit.Ordinal)];
}
