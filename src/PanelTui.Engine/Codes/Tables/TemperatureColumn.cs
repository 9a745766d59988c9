using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>The columns of the ampacity table, by the temperature that insulation or terminals stand.</summary>
public enum TemperatureColumn
{
    At60,
    At75,
    At90,
}

/// <summary>Between temperatures and columns.</summary>
public static class TemperatureColumns
{
    extension(TemperatureColumn column)
    {
        public Celsius Temperature => column switch
        {
            TemperatureColumn.At60 => 60.DegC,
            TemperatureColumn.At75 => 75.DegC,
            TemperatureColumn.At90 => 90.DegC,
            _ => throw Unnamed.Of(column),
        };
    }

    /// <summary>The warmest column that a temperature reaches; below 60 C the coldest there is.</summary>
    public static TemperatureColumn Reached(Celsius temperature) =>
        temperature >= 90.DegC ? TemperatureColumn.At90
        : temperature >= 75.DegC ? TemperatureColumn.At75
        : TemperatureColumn.At60;

    public static TemperatureColumn Cooler(TemperatureColumn left, TemperatureColumn right) => left < right ? left : right;
}
