using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules;

/// <summary>Voltage drops that the notes to 210.19(A) and 215.2(A) call reasonable; a note binds nobody, 90.5(C).</summary>
internal static class VoltageDropLimits
{
    /// <summary>Of a branch circuit, or of a feeder.</summary>
    public static readonly Percent Alone = 3.Pct;

    /// <summary>Of feeder and branch circuit to the farthest load.</summary>
    public static readonly Percent Together = 5.Pct;
}
