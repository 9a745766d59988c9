using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Largest branch-circuit device of a hermetic compressor, in per cent of its rated-load current, 440.22(A).</summary>
/// <remarks>A maximum overcurrent protection on the nameplate goes before these.</remarks>
public static class CompressorDevice
{
    public static readonly CodeSection Section = Nec.Section("440.22(A)");

    public static readonly Percent Usual = 175.Pct;

    /// <summary>Where it will not start on less.</summary>
    public static readonly Percent Most = 225.Pct;
}
