using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The smallest conductor that will do.</summary>
public static class ConductorChoice
{
    /// <summary>That carries the load and is protected by the device.</summary>
    public static ConductorFit? Smallest(
        ConductorMetal metal, ConductorLoad load, WiringConditions conditions, Amperes? device, ConductorProtection protection)
    {
        foreach (var size in ConductorAmpacity.Sizes(metal))
        {
            if (conditions.Fit(size) is { } fit && fit.Carries(load) && (device is not { } one || protection.Largest(fit) >= one))
                return fit;
        }
        return null;
    }
}
