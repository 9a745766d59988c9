using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The power factor of loads together: their watts over their volt-amperes.</summary>
public static class MeanPowerFactor
{
    /// <summary>Unity for no load at all.</summary>
    public static PowerFactor Of(IEnumerable<PlacedLoad> loads)
    {
        var (watts, power) = (0m, 0m);
        foreach (var load in loads)
        {
            power += load.Size.Power.Value;
            watts += load.Size.Power.Value * load.Load.PowerFactor.Value;
        }
        return power <= 0 || watts <= 0 || watts >= power ? PowerFactor.Unity : new PowerFactor(watts / power);
    }
}
