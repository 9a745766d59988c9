using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Full-load current of three-phase induction motors, the 208 V column. From memory.</summary>
public static class ThreePhaseMotorCurrent
{
    public static readonly CodeSection Section = Nec.FromMemory("Table 430.250");

    public static readonly ImmutableArray<Volts> Columns = [208.V];

    /// <summary>In the printed order: 1/2 hp first.</summary>
    public static readonly ImmutableArray<MotorRow> Rows =
    [
        new(0.5m.Hp, [2.4m]),
        new(0.75m.Hp, [3.5m]),
        new(1.Hp, [4.6m]),
        new(1.5m.Hp, [6.6m]),
        new(2.Hp, [7.5m]),
        new(3.Hp, [10.6m]),
        new(5.Hp, [16.7m]),
        new(7.5m.Hp, [24.2m]),
        new(10.Hp, [30.8m]),
        new(15.Hp, [46.2m]),
        new(20.Hp, [59.4m]),
        new(25.Hp, [74.8m]),
        new(30.Hp, [88]),
        new(40.Hp, [114]),
        new(50.Hp, [143]),
        new(60.Hp, [169]),
        new(75.Hp, [211]),
        new(100.Hp, [273]),
        new(125.Hp, [343]),
        new(150.Hp, [396]),
        new(200.Hp, [528]),
    ];

    /// <summary>The current of a motor, between two rows that of the next larger one; nothing above 200 hp.</summary>
    public static TableCurrent? Find(Horsepower output) => MotorRow.Find(Rows, Columns, output, Columns[0]);
}
