using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

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

    /// <summary>One decimal, and more only where the figure would else read like the limit that it is beyond.</summary>
    public static string Beyond(decimal value, decimal limit, string unit)
    {
        var decimals = 1;
        while (decimals < MostDecimals && Math.Round(value, decimals) == limit)
            decimals++;
        return Shown.Rounded(value, decimals, unit);
    }

    public static string Beyond(Amperes current, Amperes limit) => Beyond(current.Value, limit.Value, "A");

    public static string Beyond(Watts power, Watts limit) => Beyond(power.Value, limit.Value, "W");
}
