using System.Collections.Immutable;
using PanelTui.Editing;

namespace PanelTui.Tables;

/// <summary>One value for a column of the table, for one circuit or for several at once; no text clears it.</summary>
internal sealed class ColumnForm : Form
{
    /// <summary>Loads are written, and values cleared, circuit by circuit, about 3 ms each: more would make every letter wait.</summary>
    private const int MostPreviewed = 8;

    private readonly CircuitColumn _column;
    private readonly ImmutableArray<int> _circuits;

    /// <param name="session">The open file.</param>
    /// <param name="column">One that is written into the file.</param>
    /// <param name="rows">The circuits, at least one.</param>
    /// <param name="begun">What was typed on the cell, in the place of its value; nothing to begin with the value.</param>
    public ColumnForm(Session session, CircuitColumn column, ImmutableArray<CircuitRow> rows, string? begun = null)
    {
        (_column, _circuits) = (column, [.. rows.Select(row => row.Circuit.Ordinal)]);
        var label = rows is [var one] ? $"{one.Circuit.Space} {column.Title}" : $"{column.Title} of {rows.Length}";
        var values = rows.Select(column.Value).Distinct().ToList();
        var value = values is [var same] ? same : "";
        Fields = IsOfLoads
            ? [CircuitForm.LoadField(value) with { Label = label, Begun = begun }]
            : [FieldEntry.Of(session, column.PathOf(_circuits[0]), 0, label) with { Value = value, Begun = begun }];
    }

    public override ImmutableArray<FormField> Fields { get; }

    public override bool StepByStep => true;

    public override string? OnwardByTab => _circuits.Length == 1 ? "done, next cell" : null;

    private bool IsOfLoads => _column.Key == CircuitColumn.Loads;

    public override FormRefusal? WhyNot(int field, string text) =>
        IsOfLoads ? null : FieldEntry.WhyNot(field, _column.Field!, text);

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        if (IsUnchanged(texts)) return null;
        if (session.Do(snapshot => _column.Set(snapshot, _circuits, Text(texts))) is not { } reason) return null;
        if (session.WhyNoEdit is not null) return new FormRefusal(0, reason);
        return (IsOfLoads ? CircuitForm.LoadRefusal(0, texts[0]) : WhyNot(0, texts[0])) ?? new FormRefusal(0, reason);
    }

    public override void Preview(Session session, ImmutableArray<string> texts)
    {
        var isSlow = _circuits.Length > MostPreviewed && (IsOfLoads || texts[0].Trim().Length == 0);
        if (isSlow || IsUnchanged(texts)) session.EndPreview();
        else session.Try(snapshot => _column.Set(snapshot, _circuits, Text(texts)));
    }

    /// <summary>Loads in the words of the format.</summary>
    private string Text(ImmutableArray<string> texts) => IsOfLoads ? TypedLoads.Of(texts[0]).Text : texts[0];

    private bool IsUnchanged(ImmutableArray<string> texts) => _circuits.Length == 1 && texts[0].Trim() == Fields[0].Value;
}
