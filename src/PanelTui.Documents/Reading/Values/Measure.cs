using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// One physical quantity as a schedule writes it: its units, the first of them its base, and its bounds in the
/// base.
/// </summary>
internal sealed record Measure(string Name, ImmutableArray<MeasuringUnit> Units, decimal Most)
{
    /// <summary>The least value; where it is nothing, the value must be above zero.</summary>
    public decimal? Least { get; init; }

    public bool HasFractions { get; init; }

    /// <summary>False where no value is in the thousands, so that `1.500` has one reading.</summary>
    public bool HasThousands { get; init; } = true;

    /// <summary>Where the number is copied from: `as on the handle`.</summary>
    public string WrittenAs { get; init; } = "with its unit";

    /// <summary>The unit that a bare number has where people type it; nothing where it could be several.</summary>
    public MeasuringUnit? Implied { get; init; } = Units.Length == 1 ? Units[0] : null;

    public string Symbols => Listed.Or([.. Units.Select(unit => unit.Symbol)]);

    /// <summary>The unit of that symbol in any case: no two units of one measure differ by case alone.</summary>
    public MeasuringUnit? Unit(string symbol) =>
        Units.FirstOrDefault(unit => unit.Symbol.Equals(symbol, StringComparison.OrdinalIgnoreCase));

    public Measure OrZero => this with { Least = 0 };

    /// <summary>
    /// What is wrong with a value in the base unit, as the rest of a sentence; nothing where it is within bounds.
    /// </summary>
    public string? OutOfBounds(decimal value) => this switch
    {
        { Least: null } when value <= 0 => "; it must be above 0",
        { Least: { } least } when value < least => $"; it must be {Units[0].After(Shown.Exactly(least))} or more",
        _ when value > Most => $"; the most that makes sense is {Units[0].After(Shown.Exactly(Most))}",
        _ => null,
    };
}
