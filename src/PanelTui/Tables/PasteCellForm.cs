using System.Collections.Immutable;
using PanelTui.Editing;

namespace PanelTui.Tables;

/// <summary>One cell of pasted rows, to be mended before they go in.</summary>
internal sealed class PasteCellForm : Form
{
    private readonly CircuitColumn? _column;
    private readonly Action<string> _take;

    /// <param name="session">The open file.</param>
    /// <param name="label">Which cell it is.</param>
    /// <param name="column">What stands in it; nothing where there is no such column.</param>
    /// <param name="text">As it was pasted.</param>
    /// <param name="take">Takes the mended text.</param>
    public PasteCellForm(Session session, string label, CircuitColumn? column, string text, Action<string> take)
    {
        (_column, _take) = (column, take);
        var field = column switch
        {
            null => new FormField(label, text, 0, "no column of the table: clear it"),
            { Key: CircuitColumn.Loads } => CircuitForm.LoadField(text),
            _ => FieldEntry.Of(session, column.PathOf(int.MaxValue)),
        };
        Fields = [field with { Label = label, Value = text }];
    }

    public override ImmutableArray<FormField> Fields { get; }

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts)
    {
        var text = texts[0].Trim();
        if (text.Length > 0 && _column is { Key: not CircuitColumn.Loads } column && FieldEntry.WhyNot(0, column.Field!, text) is { } refusal) return refusal;
        if (_column is { Key: CircuitColumn.Loads } && CircuitForm.LoadRefusal(0, text) is { } unread) return unread;
        _take(_column is { Key: CircuitColumn.Loads } ? TypedLoads.Of(text).Text : text);
        return null;
    }
}
