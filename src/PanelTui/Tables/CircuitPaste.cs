using System.Collections.Immutable;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Editing;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Tables;

/// <summary>Pasted rows on their way into the schedule: with a space each is the breaker there or a new one, without they go onto the rows from the cursor down.</summary>
/// <remarks>All of it goes in as one step, or nothing does. An empty cell leaves the value that is there.</remarks>
/// <param name="Columns">What each cell is, by the columns of the table; nothing for one that stands for none.</param>
/// <param name="Rows">The cells.</param>
/// <param name="Targets">The circuits from the cursor down, for rows without a space.</param>
internal sealed record CircuitPaste(
    ImmutableArray<CircuitColumn?> Columns, ImmutableArray<ImmutableArray<string>> Rows, ImmutableArray<int> Targets)
{
    /// <summary>Every space of the largest panel with two halves each.</summary>
    private const int MostRows = 2 * SpaceNumber.Most;

    /// <summary>The rows of a text, or why they are none of this table.</summary>
    /// <param name="text">As pasted; a first line of headings or keys names the columns.</param>
    /// <param name="cursor">The column that the cells begin at where no line names them.</param>
    /// <param name="targets">The circuits from the cursor down.</param>
    public static (CircuitPaste? Paste, string? WhyNot) Of(string text, int cursor, ImmutableArray<int> targets)
    {
        var rows = SpreadsheetText.Rows(text);
        if (rows.IsEmpty) return (null, "There is nothing in what was pasted");
        if (rows.Length > MostRows) return (null, $"{rows.Length} rows were pasted: no panel has as many breakers");
        var named = rows[0].Select(Named).ToList();
        var count = rows.Max(row => row.Length);
        return rows.Length > 1 && IsHeader(rows[0], named)
            ? (new CircuitPaste([.. named, .. Enumerable.Repeat<CircuitColumn?>(null, count - named.Count)], rows.RemoveAt(0), targets), null)
            : (new CircuitPaste(FromCursor(cursor, count), rows, targets), null);
    }

    /// <summary>The same with another text in one cell.</summary>
    public CircuitPaste With(int row, int cell, string text) => this with { Rows = Rows.SetItem(row, Rows[row].SetItem(cell, text)) };

    /// <summary>The same without a row.</summary>
    public CircuitPaste Without(int row) => this with { Rows = Rows.RemoveAt(row), Targets = row < Targets.Length ? Targets.RemoveAt(row) : Targets };

    /// <summary>What it would do, or what is in its way: every cell that cannot be read, else the first row that does not go in.</summary>
    public (Intended? Done, ImmutableArray<PasteProblem> Problems) Into(Snapshot snapshot)
    {
        var targets = Enumerable.Range(0, Rows.Length).Select(row => TargetOf(snapshot, row)).ToList();
        ImmutableArray<PasteProblem> unreadable = [.. Enumerable.Range(0, Rows.Length).SelectMany(row => Unreadable(snapshot, row, targets[row]))];
        if (!unreadable.IsEmpty) return (null, unreadable);
        var title = Title(targets.Count(target => target is null), targets.Count(target => target is not null));
        var done = Documents.Intents.InOrder.Of(snapshot, title);
        for (var row = 0; row < Rows.Length; row++)
        {
            var (before, step) = (done, StepOf(row, targets[row]));
            done = Documents.Intents.InOrder.Of(snapshot, title, _ => before, step);
            if (!done.IsPossible) return (null, [Blame(before.After!, row, targets[row], done.Refusal)]);
        }

        return (done, []);
    }

    /// <summary>What a row is called in a sentence: `row 3`, with its space where it has one.</summary>
    public string Called(PasteProblem problem)
    {
        var space = TextOf(problem.Row, "space");
        var column = problem.Cell is { } cell ? $", {Columns[cell]?.Title ?? $"column {cell + 1}"}" : "";
        return $"row {problem.Row + 1}{(space.Length > 0 ? $" (space {space})" : "")}{column}: {problem.Reason}";
    }

    private bool IsBySpace => Columns.Any(column => column?.Key == "space");

    /// <summary>Every cell names a column, or one names the space and another one something else.</summary>
    private static bool IsHeader(ImmutableArray<string> cells, List<CircuitColumn?> named) =>
        cells.Zip(named).All(pair => pair.First.Length == 0 || pair.Second is not null)
        || (named.Exists(column => column?.Key == "space") && named.Count(column => column is not null) > 1);

    private static ImmutableArray<CircuitColumn?> FromCursor(int cursor, int count)
    {
        var written = CircuitColumns.All.Skip(cursor).Where(column => column.Key is not null).Take(count).ToList();
        return [.. written, .. Enumerable.Repeat<CircuitColumn?>(null, count - written.Count)];
    }

    private static CircuitColumn? Named(string cell) => CircuitColumns.All.FirstOrDefault(column => Same(cell, column.Title)
        || (column.Key is { } key && (Same(cell, key.Replace('_', ' ')) || Same(cell, column.Field!.Title))));

    private static bool Same(string cell, string word) => cell.Replace('_', ' ').Equals(word, StringComparison.OrdinalIgnoreCase);

    private string TextOf(int row, string key) =>
        Rows[row].Where((_, cell) => Columns[cell]?.Key == key).FirstOrDefault(text => text.Length > 0) ?? "";

    /// <summary>The breaker that a row is about; nothing for a new one.</summary>
    private int? TargetOf(Snapshot snapshot, int row)
    {
        if (!IsBySpace) return row < Targets.Length ? Targets[row] : null;
        return SpaceNumber.TryParse(TextOf(row, "space"), out var space)
            ? snapshot.Schedule!.Circuits.FirstOrDefault(circuit => circuit.Space == space)?.Ordinal
            : null;
    }

    private IEnumerable<PasteProblem> Unreadable(Snapshot snapshot, int row, int? target)
    {
        if (!IsBySpace && target is null)
        {
            yield return new PasteProblem(row, null, "there is no breaker on this row; for a new one paste its space too, from the column Space");
            yield break;
        }

        foreach (var (key, needs) in target is null ? ((string, string)[])[("space", "its space"), ("breaker", "its rating, like 20 A")] : [])
        {
            if (TextOf(row, key).Length > 0) continue;
            var cell = Columns.TakeWhile(column => column?.Key != key).Count();
            yield return new PasteProblem(row, cell < Rows[row].Length ? cell : null, $"a new breaker needs {needs}");
        }

        for (var cell = 0; cell < Rows[row].Length; cell++)
        {
            if (Rows[row][cell].Length > 0 && WhyNot(snapshot, Columns[cell], Rows[row][cell], target) is { } reason) yield return new PasteProblem(row, cell, reason);
        }
    }

    private static string? WhyNot(Snapshot snapshot, CircuitColumn? column, string text, int? target)
    {
        if (column is null) return $"no column of the table is meant by \"{text}\"";
        if (column.Key == CircuitColumn.Kind && target is null) return "the kind of a new breaker stands in its load";
        if (column.Key == CircuitColumn.Kind && column.WhyNot(CircuitRow.AllOf(snapshot)[target!.Value]) is { } why) return why;
        return column.Key is null or CircuitColumn.Loads || FieldEntry.WhyNot(0, column.Field!, text) is not { } refusal ? null : refusal.Reason;
    }

    private Func<Snapshot, Intended> StepOf(int row, int? target, Func<CircuitColumn, bool>? only = null)
    {
        var values = Rows[row].Select((text, cell) => (Column: Columns[cell]!, Text: text))
            .Where(value => value.Text.Length > 0 && value.Column.Key is not null && (only is null || only(value.Column))).ToList();
        if (target is not { } circuit)
        {
            return snapshot => AddCircuit.In(snapshot, new NewCircuit(
                [.. values.Where(value => value.Column.Key != CircuitColumn.Loads).Select(value => new TypedValue(value.Column.Key!, value.Text))],
                LoadPhrase.Parse(values.Find(value => value.Column.Key == CircuitColumn.Loads).Text ?? "")));
        }

        if (IsBySpace) values.RemoveAll(value => value.Column.Key == "space");
        var plain = values.Where(value => value.Column.Key is not (CircuitColumn.Loads or CircuitColumn.Kind)).ToList();
        return snapshot => Documents.Intents.InOrder.Of(
            snapshot,
            "",
            [
                now => SetField.In(now, "", [.. plain.Select(value => (value.Column.PathOf(circuit), value.Text))]),
                .. values.Except(plain).Select(value => (Func<Snapshot, Intended>)(now => value.Column.Set(now, [circuit], value.Text))),
            ]);
    }

    /// <summary>The cell without which the row would go in; the whole row where it is none of them alone.</summary>
    private PasteProblem Blame(Snapshot before, int row, int? target, string reason)
    {
        for (var cell = 0; cell < Rows[row].Length; cell++)
        {
            var column = Columns[cell];
            var isNeeded = target is null && column?.Key is "space" or "breaker";
            if (!isNeeded && Rows[row][cell].Length > 0 && StepOf(row, target, other => other != column)(before).IsPossible) return new PasteProblem(row, cell, reason);
        }

        return new PasteProblem(row, null, reason);
    }

    private static string Title(int added, int changed) => (added, changed) switch
    {
        (1, 0) => "Paste one breaker",
        (_, 0) => $"Paste {added} breakers",
        (0, 1) => "Paste onto one breaker",
        (0, _) => $"Paste onto {changed} breakers",
        _ => $"Paste {added} new and onto {changed} that {(changed == 1 ? "was" : "were")} there",
    };
}
