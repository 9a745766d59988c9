using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A conductor as it is ordered: `6 AWG Cu`, `1/0 AWG Al`, `250 kcmil Cu`.</summary>
internal sealed class ConductorForm() : ValueForm<Conductor>("a wire size and metal such as 6 AWG Cu")
{
    private const string Expected = "write size and metal, e.g. 6 AWG Cu, 1/0 AWG Al or 250 kcmil Cu";

    private static readonly ImmutableArray<string> Units = ["AWG", "kcmil"];

    /// <summary>The sizes of the conductor tables (Chapter 9 Table 8), from memory; 0 to -3 are 1/0 to 4/0.</summary>
    private static readonly ImmutableArray<int> Gauges = [18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3];

    private static readonly ImmutableArray<int> Kcmils =
        [250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000, 1250, 1500, 1750, 2000];

    private static readonly ImmutableArray<string> Metals = ["Cu", "Al"];

    public override string Unit => "AWG or kcmil";

    /// <summary>From 14 AWG up, copper first: what is pulled into panels.</summary>
    public override ImmutableArray<string> Offered { get; } =
    [
        .. Metals.SelectMany(metal => Gauges.Where(gauge => gauge <= (metal == "Cu" ? 14 : 12))
            .Select(gauge => $"{ConductorSize.Awg(gauge)} {metal}")),
        .. Metals.SelectMany(metal => Kcmils.Where(kcmil => kcmil <= 500).Select(kcmil => $"{ConductorSize.OfKcmil(kcmil)} {metal}")),
    ];

    public override string Written(string text) => Read(Spelt(text)) is { Succeeded: true, Value: var conductor } ? $"{conductor}" : text.Trim();

    /// <summary>A size without its metal, in copper and in aluminum.</summary>
    public override ImmutableArray<string> Meant(string text) =>
        [.. Metals.Select(metal => $"{Spelt(text)} {metal}").Where(whole => Read(whole).Succeeded).Select(Written)];

    public override Outcome<Conductor> Read(string text)
    {
        var (size, unit, metal) = Parts(text.Trim());
        if (unit.Length == 0) return Refused(text, Expected);
        if (Size(size, unit) is not { } known) return Refused(text, WrongSize(unit));
        return Metal(metal) is { } found
            ? Outcome.Of(new Conductor(known, found))
            : Refused(text, WrongMetal(known, metal));
    }

    /// <summary>`#6 copper` as `6 AWG Cu`: the words of the trade in those of the format.</summary>
    private static string Spelt(string text)
    {
        var (size, unit, metal) = Parts(text.Trim().TrimStart('#'));
        if (metal.StartsWith("mcm", StringComparison.OrdinalIgnoreCase)) (unit, metal) = ("kcmil", metal[3..].Trim());
        if (unit.Length == 0) unit = Kcmils.Any(kcmil => size == $"{kcmil}") ? "kcmil" : "AWG";
        return $"{size} {unit} {metal.ToUpperInvariant() switch { "COPPER" => "Cu", "ALUMINUM" or "ALUMINIUM" => "Al", _ => metal }}".Trim();
    }

    private static (string Size, string Unit, string Metal) Parts(string text)
    {
        var at = 0;
        while (at < text.Length && !char.IsAsciiLetter(text[at])) at++;
        var rest = text[at..];
        var unit = Units.FirstOrDefault(word => rest.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        return (text[..at].Trim(), unit ?? "", rest[(unit?.Length ?? 0)..].Trim());
    }

    private static ConductorSize? Size(string size, string unit)
    {
        var aught = unit == "AWG" && size.EndsWith("/0", StringComparison.Ordinal);
        if (!int.TryParse(aught ? size[..^2] : size, NumberStyles.None, CultureInfo.InvariantCulture, out var number))
            return null;
        if (unit == "kcmil") return Kcmils.Contains(number) ? ConductorSize.OfKcmil(number) : null;
        var gauge = aught ? 1 - number : number;
        var known = Gauges.Contains(gauge) && (aught == gauge < 1);
        return known ? ConductorSize.Awg(gauge) : null;
    }

    private static ConductorMetal? Metal(string metal) => metal.ToUpperInvariant() switch
    {
        "CU" => ConductorMetal.Copper,
        "AL" => ConductorMetal.Aluminum,
        "CCA" => ConductorMetal.CopperCladAluminum,
        _ => null,
    };

    private static string WrongSize(string unit) => unit == "AWG"
        ? "AWG sizes are 18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 1/0, 2/0, 3/0 and 4/0"
        : $"kcmil sizes are {string.Join(", ", Kcmils)}";

    private static string WrongMetal(ConductorSize size, string metal) => metal.Length == 0
        ? $"it has no metal; write {size} Cu or {size} Al"
        : $"the metal is Cu, Al or CCA, e.g. {size} Cu";

    private static Outcome<Conductor> Refused(string text, string problem) =>
        Outcome.Refused<Conductor>($"is {Quoted.Of(text)}; {problem}");
}
