using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes;

/// <summary>A band of a demand factor: up to this much in all, at this factor; what lies above goes to the next band.</summary>
public readonly record struct FactorTier(VoltAmperes UpTo, Percent Factor);
