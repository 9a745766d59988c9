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
            if (row.Output.Value + Slack >= output.Value)
                return new TableCurrent(row.Amperes[column].A, row.Output, columns[column]);
        }
        return null;
    }

    private static int Nearest(ImmutableArray<Volts> columns, Volts volts)
    {
        var nearest = 0;
        while (nearest + 1 < columns.Length && volts > Between(columns[nearest], columns[nearest + 1]))
            nearest++;
        return nearest;
    }

    private static Volts Between(Volts lower, Volts higher) => new((lower.Value + higher.Value) / 2);
}
