using PanelTui.Engine;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Demand;

/// <summary>A figure of an assessment by the name that cases give it: `neutral_amps`, `legs.A`, `connected.legs.B`.</summary>
internal static class Figure
{
    public static decimal Of(Assessment assessed, string path) => path.Split('.') switch
    {
        ["connected", .. var rest] => Connected(assessed, rest),
        ["scenario", "limit_w", var leg] => assessed.Scenarios[0].Legs[LegOf(leg)].Limit!.Value.Value,
        ["scenario", "running_w", var leg] => assessed.Scenarios[0].Legs[LegOf(leg)].Running.Value,
        ["standard_ocpd"] => assessed.Feeder!.StandardOcpd!.Value.Value,
        var parts => Demand(assessed.Demand.ShouldNotBeNull(), parts),
    };

    private static decimal Connected(Assessment assessed, string[] parts) => parts switch
    {
        ["va"] => assessed.Connected.Total.Value,
        ["legs", var leg] => assessed.Connected.AmperesOn(LegOf(leg)).Value,
        ["neutral_amps"] => assessed.Connected.Neutral.Value,
        ["imbalance_percent"] => assessed.Connected.Imbalance.Value,
        _ => throw new ArgumentException($"Connected has no figure {string.Join('.', parts)}.", nameof(parts)),
    };

    private static decimal Demand(DemandResult demand, string[] parts) => parts switch
    {
        ["va"] => demand.Total.Value,
        ["amps"] => demand.Amperes.Value,
        ["legs", var leg] => demand.Legs.AmperesOn(LegOf(leg)).Value,
        ["legs_va", var leg] => demand.Legs.VoltAmperesOn(LegOf(leg)).Value,
        ["neutral_va"] => demand.NeutralVoltAmperes.Value,
        ["neutral_amps"] => demand.Neutral.Value,
        ["minimum_ampacity"] => demand.MinimumAmpacity.Value,
        ["ampacity", var leg] => demand.MinimumAmpacityOn(LegOf(leg)).Value,
        _ => throw new ArgumentException($"Demand has no figure {string.Join('.', parts)}.", nameof(parts)),
    };

    private static Leg LegOf(string name) => Enum.Parse<Leg>(name);
}
