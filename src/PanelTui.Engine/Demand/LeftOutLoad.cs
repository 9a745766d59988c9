using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;

namespace PanelTui.Engine.Demand;

/// <summary>A load that does not count by itself, and why: another, or a figure, stands for it.</summary>
public sealed record LeftOutLoad(PlacedLoad Load, string Why, Citation Cite)
{
    public DerivationStep Step() => new($"Left out, {Why}: {Load.Label}", 0, "VA", Cite, [Load.Circuit.Space]);
}
