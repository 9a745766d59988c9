using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Full-load current of single-phase alternating-current motors; it goes before the nameplate's, 430.6(A)(1).</summary>
public static class MotorCurrent
{
    public static readonly CodeSection Section = Nec.Section("Table 430.248");

    /// <summary>The voltages as printed; 115 V serves 110 to 120 V systems, 230 V serves 220 to 240 V ones.</summary>
    public static readonly ImmutableArray<Volts> Columns = [115.V, 200.V, 208.V, 230.V];

    /// <summary>In the printed order: 1/6 hp first.</summary>
    public static readonly ImmutableArray<MotorRow> Rows =
    [
        //               115 V 200 V 208 V 230 V
        new((1m / 6).Hp, [4.4m, 2.5m, 2.4m, 2.2m]),
        new(0.25m.Hp, [5.8m, 3.3m, 3.2m, 2.9m]),
        new((1m / 3).Hp, [7.2m, 4.1m, 4.0m, 3.6m]),
        new(0.5m.Hp, [9.8m, 5.6m, 5.4m, 4.9m]),
        new(0.75m.Hp, [13.8m, 7.9m, 7.6m, 6.9m]),
        new(1.Hp, [16, 9.2m, 8.8m, 8.0m]),
        new(1.5m.Hp, [20, 11.5m, 11.0m, 10]),
        new(2.Hp, [24, 13.8m, 13.2m, 12]),
        new(3.Hp, [34, 19.6m, 18.7m, 17]),
        new(5.Hp, [56, 32.2m, 30.8m, 28]),
        new(7.5m.Hp, [80, 46, 44, 40]),
        new(10.Hp, [100, 57.5m, 55, 50]),
    ];

    /// <summary>The current of a motor; nothing above 10 hp, where the table ends.</summary>
    /// <remarks>
    /// Between two rows the next larger one counts. A voltage between two columns goes to the nearer one, from the middle to the
    /// lower, which asks for more.
    /// </remarks>
    public static TableCurrent? Find(Horsepower output, Volts volts) => MotorRow.Find(Rows, Columns, output, volts);
}
