using System.Collections.Frozen;

namespace PanelTui.Documents.Reading.Values;

/// <summary>Units beyond those that are accepted, so that a refusal can say what was meant.</summary>
internal static class UnitNames
{
    private static readonly FrozenDictionary<string, string> Symbols = new Dictionary<string, string>
    {
        ["amp"] = "A", ["amps"] = "A", ["ampere"] = "A", ["amperes"] = "A", ["kiloamps"] = "kA",
        ["watt"] = "W", ["watts"] = "W", ["kilowatt"] = "kW", ["kilowatts"] = "kW",
        ["volt-amperes"] = "VA", ["voltamperes"] = "VA", ["v-a"] = "VA", ["v.a."] = "VA",
        ["volt"] = "V", ["volts"] = "V", ["vac"] = "V", ["v ac"] = "V",
        ["horsepower"] = "hp", ["h.p."] = "hp",
        ["foot"] = "ft", ["feet"] = "ft", ["ft."] = "ft", ["'"] = "ft", ["′"] = "ft",
        ["meter"] = "m", ["meters"] = "m", ["metre"] = "m", ["metres"] = "m", ["mtr"] = "m",
        ["ft²"] = "ft2", ["sqft"] = "ft2", ["sq ft"] = "ft2", ["sq. ft."] = "ft2", ["ft^2"] = "ft2", ["sf"] = "ft2",
        ["square feet"] = "ft2", ["m²"] = "m2", ["sqm"] = "m2", ["sq m"] = "m2", ["m^2"] = "m2",
        ["square meters"] = "m2",
        ["°c"] = "C", ["ºc"] = "C", ["deg c"] = "C", ["degc"] = "C", ["celsius"] = "C",
        ["°f"] = "F", ["ºf"] = "F", ["deg f"] = "F", ["degf"] = "F", ["fahrenheit"] = "F",
        ["kw-h"] = "kWh", ["kw h"] = "kWh", ["kw-hr"] = "kWh", ["kilowatt-hours"] = "kWh", ["watt-hours"] = "Wh",
        ["percent"] = "%", ["per cent"] = "%", ["pct"] = "%",
        ["sec"] = "s", ["secs"] = "s", ["second"] = "s", ["seconds"] = "s",
        ["hr"] = "h", ["hrs"] = "h", ["hour"] = "h", ["hours"] = "h",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>Told apart by case, so looked up before the others.</summary>
    private static readonly FrozenDictionary<string, string> ExactQuantities = new Dictionary<string, string>
    {
        ["mW"] = "a power in milliwatts",
        ["MW"] = "a power in megawatts",
        ["mVA"] = "an apparent power in millivolt-amperes",
        ["MVA"] = "an apparent power in megavolt-amperes",
        ["mA"] = "a current in milliamperes",
        ["MA"] = "a current in megaamperes",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> Quantities = new Dictionary<string, string>
    {
        ["A"] = "a current", ["kA"] = "a current",
        ["W"] = "a power", ["kW"] = "a power",
        ["VA"] = "an apparent power", ["kVA"] = "an apparent power",
        ["V"] = "a voltage", ["kV"] = "a voltage",
        ["hp"] = "a motor output", ["PS"] = "a motor output in metric horsepower",
        ["ft"] = "a length", ["m"] = "a length", ["cm"] = "a length", ["mm"] = "a length", ["km"] = "a length",
        ["in"] = "a length in inches", ["\""] = "a length in inches",
        ["yd"] = "a length in yards", ["mi"] = "a length in miles",
        ["ft2"] = "an area", ["m2"] = "an area",
        ["C"] = "a temperature", ["F"] = "a temperature", ["K"] = "a temperature in kelvins",
        ["Wh"] = "an energy", ["kWh"] = "an energy", ["MWh"] = "an energy",
        ["Ah"] = "a charge, and without its voltage no energy",
        ["%"] = "a percentage", ["s"] = "a time", ["h"] = "a time", ["ms"] = "a time", ["min"] = "a time",
        ["Hz"] = "a frequency", ["ohm"] = "a resistance", ["AWG"] = "a wire size", ["kcmil"] = "a wire size",
        ["BTU"] = "a heat and no electrical rating",
        ["BTU/h"] = "a cooling or heating capacity and no electrical rating",
        ["BTUh"] = "a cooling or heating capacity and no electrical rating",
        ["ton"] = "a cooling capacity and no electrical rating",
        ["tons"] = "a cooling capacity and no electrical rating",
        ["lm"] = "a light output and no electrical rating", ["gal"] = "a volume",
        ["x"] = "a factor",
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The symbol for a unit that was written out, such as `A` for `amps`.</summary>
    public static string? Symbol(string unit) => Symbols.GetValueOrDefault(unit);

    /// <summary>What a unit measures, such as `a voltage`.</summary>
    public static string? Quantity(string unit) =>
        ExactQuantities.GetValueOrDefault(unit)
        ?? Quantities.GetValueOrDefault(unit)
        ?? (Symbol(unit) is { } symbol ? Quantities.GetValueOrDefault(symbol) : null);
}
