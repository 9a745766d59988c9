using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>The column that terminals allow, 110.14(C): as marked; else 60 C up to 100 A and 75 C above.</summary>
public static class TerminalTemperatures
{
    public static readonly CodeSection Section = Nec.Section("110.14(C)");

    /// <summary>The largest circuit whose unmarked terminals count as 60 C.</summary>
    public static readonly Amperes MostAtSixty = 100.A;

    /// <summary>A marking above 75 C counts as 75 C: the 90 C column is only where corrections start.</summary>
    public static TemperatureColumn For(Celsius? marked, Amperes circuit) =>
        marked is { } temperature ? TemperatureColumns.Cooler(TemperatureColumns.Reached(temperature), TemperatureColumn.At75)
        : circuit <= MostAtSixty ? TemperatureColumn.At60
        : TemperatureColumn.At75;
}
