using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>An existing load as it was measured: 125 % of its highest demand, and what is added.</summary>
public static class MeasuredDemand
{
    public static readonly CodeSection Section = Nec.Section("220.87");

    public static readonly Percent OfThePeak = 125.Pct;

    /// <summary>Where there is no record of a year, in 15-minute steps on the busier leg.</summary>
    public const int LeastDays = 30;
}
