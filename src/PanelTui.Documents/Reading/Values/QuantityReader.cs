namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// Reads a quantity as it stands on a nameplate, `20 A` or `1.5 kW`, into the base unit of its measure.
/// </summary>
internal static class QuantityReader
{
    /// <param name="text">As written in the file, without quotes.</param>
    /// <param name="measures">What may stand here; a load's rating may be any of four.</param>
    /// <param name="example">A good value, for the sentence.</param>
    public static Outcome<Quantity> Read(string text, IReadOnlyList<Measure> measures, string example)
    {
        var (number, unit) = Parts(text.Trim());
        if (number.Length == 0) return Refused(text, $", not {measures[0].Name}; write it like {example}");
        var found = measures
            .Select(measure => (Measure: measure, Unit: measure.Unit(unit)))
            .FirstOrDefault(pair => pair.Unit is not null);
        var fractions = measures.Any(measure => measure.HasFractions);
        if (found.Unit is null && IsOfAnother(unit, measures)) return Refused(text, WrongUnit(number, unit, measures, example));
        var value = WrittenNumber.Read(number, found.Unit?.Symbol ?? unit, fractions);
        if (!value.Succeeded) return Refused(text, $", which {value.Problem}");
        if (found.Unit is null) return Refused(text, WrongUnit(number, unit, measures, example));
        return WrittenNumber.TwoReadings(number) is { } readings && IsOfThousands(found.Unit, found.Measure)
            ? Refused(text, $", which can be read as {found.Unit.After(readings.Thousands)} or as {found.Unit.After(readings.Decimals)}; write one of these")
            : Within(text, found.Measure, found.Unit.ToBase(value.Value));
    }

    /// <summary>True for a unit that values of thousands are written in, and of which three decimals are rare: W, but not kW.</summary>
    private static bool IsOfThousands(MeasuringUnit unit, Measure measure) => measure.HasThousands && measure.Most >= 1000 && unit.ToBase(1) != 1000;

    /// <summary>Whether the unit is known, and that of another quantity, however it is spelt.</summary>
    private static bool IsOfAnother(string unit, IReadOnlyList<Measure> measures) =>
        UnitNames.Quantity(unit) is not null && !measures.Any(measure => measure.Unit(UnitNames.Symbol(unit) ?? unit) is not null);

    private static Outcome<Quantity> Within(string text, Measure measure, decimal value) =>
        measure.OutOfBounds(value) is { } problem ? Refused(text, problem) : Outcome.Of(new Quantity(measure, value));

    private static string WrongUnit(string number, string unit, IReadOnlyList<Measure> measures, string example)
    {
        var units = Listed.Or([.. measures.SelectMany(measure => measure.Units).Select(known => known.Symbol)]);
        if (unit.Length == 0)
            return $", a number without a unit; write it {measures[0].WrittenAs}, e.g. {BareExample(number, measures)}";
        if (unit.Split(' ') is [var first, _, ..] && measures.Any(measure => measure.Unit(first) is not null))
            return $"; write {number} {first} alone, and what else there is under a key of its own";
        if (UnitNames.Symbol(unit) is { } symbol && measures.Any(measure => measure.Unit(symbol) is not null))
            return $"; write the unit as {symbol}: {number} {symbol}";
        return UnitNames.Quantity(unit) is { } other
            ? $", {other}; {measures[0].Name} in {units} is expected, e.g. {example}"
            : $", and {Quoted.Of(unit)} is no unit for {measures[0].Name}; write {units}, e.g. {example}";
    }

    private static string BareExample(string number, IReadOnlyList<Measure> measures) =>
        Listed.Or([.. measures.Select(measure => measure.Units[0].After(number))]);

    /// <summary>Splits where the first letter or unit sign begins; blanks around both parts do not count.</summary>
    internal static (string Number, string Unit) Parts(string text)
    {
        var at = 0;
        while (at < text.Length && !BeginsUnit(text, at)) at++;
        return (text[..at].Trim(), text[at..].Trim());
    }

    /// <summary>A prime is a foot mark at the end, and a thousands separator within a number.</summary>
    private static bool BeginsUnit(string text, int at) =>
        char.IsLetter(text[at]) || text[at] is '%' or '°' or '"' or '′' || (text[at] == '\'' && at == text.Length - 1);

    private static Outcome<Quantity> Refused(string text, string problem) =>
        Outcome.Refused<Quantity>($"is {Quoted.Of(text)}{problem}");
}

/// <summary>A number in the base unit of its measure.</summary>
internal readonly record struct Quantity(Measure Measure, decimal Value);
