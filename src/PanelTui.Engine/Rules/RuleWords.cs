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

    /// <summary>One decimal, and more only where the figure would else read like the limit that it is beyond.</summary>
    public static string Beyond(decimal value, decimal limit, string unit)
    {
        var decimals = 1;
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
