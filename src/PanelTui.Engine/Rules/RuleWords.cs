using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules;

/// <summary>How findings call circuits and write figures.</summary>
internal static class RuleWords
{
    private const int MostDecimals = 6;

    /// <summary>`Well pump at space 5`, or `space 5` where it has no name.</summary>
    public static string Place(Circuit circuit)
    {
        var called = circuit.Called;
        return called == $"space {circuit.Space}" ? called : $"{called} at space {circuit.Space}";
    }

    /// <summary>`Bench at space 1, Saw at space 3 and Fan at space 5`.</summary>
    public static string Places(IEnumerable<Circuit> circuits) => Listed(circuits.Select(Place));

    /// <summary>A breaker by what it watches: `a standard breaker`, `an AFCI breaker`.</summary>
    public static string ABreaker(Protection protection) =>
        $"{(protection.Title.StartsWith('A') ? "an" : "a")} {protection.Title}";

    /// <summary>`a`, `a and b`, `a, b and c`.</summary>
    public static string Listed(IEnumerable<string> words)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    /// <summary>`20 A + 20 A = 40 A`.</summary>
    public static string Sum(params IEnumerable<Amperes> currents)
    {
        Amperes[] all = [.. currents];
        return $"{string.Join(" + ", all)} = {Shown.Exactly(all.Sum(one => Bounded.Product(one.Value, 1)), "A")}";
    }

    /// <summary>One decimal, none for powers, and more only where the figure would else read like the limit that it is beyond.</summary>
    public static string Beyond(decimal value, decimal limit, string unit)
    {
        var decimals = unit is "W" or "VA" ? 0 : 1;
        while (decimals < MostDecimals && Math.Round(value, decimals) == limit)
            decimals++;
        return Shown.Rounded(value, decimals, unit);
    }

    public static string Beyond(Amperes current, Amperes limit) => Beyond(current.Value, limit.Value, "A");

    public static string Beyond(Percent share, Percent limit) => Beyond(share.Value, limit.Value, "%");

    /// <summary>`75 C terminals`, or that nobody wrote their marking down.</summary>
    public static string Terminals(RuleContext context, WiringConditions conditions) => context.Panel.Terminals is null
        ? $"{conditions.Terminals.Temperature}, the terminals' marking not being stated"
        : $"{conditions.Terminals.Temperature} terminals";

    public static string Beyond(Watts power, Watts limit) => Beyond(power.Value, limit.Value, "W");
}
