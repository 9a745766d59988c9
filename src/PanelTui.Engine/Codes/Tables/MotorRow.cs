using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row of a table of motor currents: an output, and the amperes under each voltage.</summary>
public sealed record MotorRow(Horsepower Output, ImmutableArray<decimal> Amperes)
{
    /// <summary>A third written as 0.333 hp is still the row of 1/3 hp.</summary>
    private const decimal Slack = 0.001m;

    internal static TableCurrent? Find(
        ImmutableArray<MotorRow> rows, ImmutableArray<Volts> columns, Horsepower output, Volts volts)
    {
        var column = Nearest(columns, volts);
        foreach (var row in rows)
        {
            if (row.Output.Value >= output.Value - Slack)
                return new TableCurrent(row.Amperes[column].A, row.Output, columns[column]);
        }
        return null;
    }

    private static int Nearest(ImmutableArray<Volts> columns, Volts volts)
    {
        var nearest = 0;
        for (var column = 1; column < columns.Length; column++)
            nearest = Distance(columns[column], volts) < Distance(columns[nearest], volts) ? column : nearest;
        return nearest;
    }

    private static decimal Distance(Volts left, Volts right) => Math.Abs(left.Value - right.Value);
}
