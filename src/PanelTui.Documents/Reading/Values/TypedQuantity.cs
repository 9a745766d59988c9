using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A quantity as people type it, `20A`, `12'`, `½ hp` or a bare number, into the spelling of the format.</summary>
internal static class TypedQuantity
{
    /// <summary>From here on a bare number is taken for watts rather than kilowatts, or amperes; common practice, no source.</summary>
    private const decimal Large = 100;

    /// <summary>The text as the format has it; unchanged where number or unit cannot be told.</summary>
    public static string Written(string text, ImmutableArray<Measure> measures)
    {
        var (number, unit) = Split(text);
        var fractions = measures.Any(measure => measure.HasFractions);
        if (!WrittenNumber.Read(number, unit, fractions).Succeeded) return text.Trim();
        if (unit.Length == 0) return Implied(text, number, measures) ?? text.Trim();
        return Known(unit, measures)?.After(number) ?? text.Trim();
    }

    /// <summary>A bare number with each unit that it may have; a fraction is horsepower alone.</summary>
    public static ImmutableArray<string> Meant(string text, ImmutableArray<Measure> measures)
    {
        var (number, unit) = Split(text);
        var written = WrittenNumber.Read(number, unit, fractions: true);
        if (unit.Length > 0 || !written.Succeeded) return [];
        var isFraction = number.Contains('/', StringComparison.Ordinal);
        return
        [
            .. measures.Where(measure => measure.HasFractions || !isFraction)
                .SelectMany(measure => Likeliest(measure, written.Value).Select(one => (measure, unit: one)))
                .Where(pair => pair.measure.OutOfBounds(pair.unit.ToBase(written.Value)) is null)
                .OrderBy(pair => Rank(pair.measure, written.Value))
                .Select(pair => pair.unit.After(number)),
        ];
    }

    /// <summary>The number with the only unit that it can have.</summary>
    private static string? Implied(string text, string number, ImmutableArray<Measure> measures) => measures is [{ Implied: { } implied }]
        ? implied.After(number)
        : Meant(text, measures) is [var only] ? only : null;

    private static (string Number, string Unit) Split(string text)
    {
        var (number, unit) = QuantityReader.Parts(text.Trim());
        return (WrittenNumber.SpeltOutFraction(number) ?? number, unit);
    }

    /// <summary>Kilowatts before watts for a small number, and not at all for a large one.</summary>
    private static IEnumerable<MeasuringUnit> Likeliest(Measure measure, decimal number)
    {
        var isScaled = measure.Units.Any(unit => unit.ToBase(1) == 1000);
        if (!isScaled) return measure.Units;
        if (number >= Large) return measure.Units.Where(unit => unit.ToBase(1) == 1);
        return measure.Implied is null ? measure.Units.OrderByDescending(unit => unit.ToBase(1)) : measure.Units;
    }

    /// <summary>A small rating is amperes or horsepower before it is kilowatts.</summary>
    private static int Rank(Measure measure, decimal number) => measure.Implied is not null && number < Large ? 0 : 1;

    private static MeasuringUnit? Known(string unit, ImmutableArray<Measure> measures) =>
        measures.Select(measure => measure.Unit(unit)).FirstOrDefault(known => known is not null)
        ?? (UnitNames.Symbol(unit) is { } symbol
            ? measures.Select(measure => measure.Unit(symbol)).FirstOrDefault(known => known is not null)
            : null);
}
