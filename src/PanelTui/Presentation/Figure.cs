using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>A quantity as the screens and summaries show it: rounded half up, with its unit.</summary>
internal static class Figure
{
    /// <summary>Currents to a tenth of an ampere.</summary>
    public static string Of(Amperes current) => Shown.Rounded(current.Value, 1, "A");

    /// <summary>Powers to the volt-ampere.</summary>
    public static string Of(VoltAmperes power) => Shown.Rounded(power.Value, 0, "VA");

    public static string Of(Watts power) => Shown.Rounded(power.Value, 0, "W");

    public static string Of(Percent share) => Shown.Rounded(share.Value, 1, "%");

    /// <summary>Hours that are left, to a tenth and never more than there are.</summary>
    public static string Of(Hours left) => Shown.RoundedDown(left.Value, 1, "h");

    /// <summary>The figure alone, or `now → then UNIT` while a change is only looked at.</summary>
    public static string Change(string now, string? then)
    {
        if (then is null || then == now) return now;
        var unit = now.LastIndexOf(' ');
        return unit > 0 && then.EndsWith(now[unit..], StringComparison.Ordinal) ? $"{now[..unit]} → {then}" : $"{now} → {then}";
    }
}
