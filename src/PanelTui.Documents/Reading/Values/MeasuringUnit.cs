namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// A unit as it is written, and how a number of it becomes one of the unit that the engine counts in.
/// </summary>
internal sealed record MeasuringUnit(string Symbol, Func<decimal, decimal> ToBase)
{
    public static MeasuringUnit Base(string symbol) => new(symbol, number => number);

    public static MeasuringUnit Thousand(string symbol) => new(symbol, number => number * 1000);

    /// <summary>The number with this unit, as it is usually written: `20 A`, but `6x`.</summary>
    public string After(string number) => Symbol == "x" ? $"{number}{Symbol}" : $"{number} {Symbol}";
}
