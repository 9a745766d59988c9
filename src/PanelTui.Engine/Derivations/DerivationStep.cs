using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Derivations;

/// <summary>One line of how a figure came about. The value is exact; rounding is left to whoever shows it.</summary>
/// <remarks>The unit is `VA`, `A`, `%`, `W`, `V`, `C`, `ft`, `ohm/kft`, `Wh`, `h` or `s`; the spaces are the breakers it comes from, and may be none. A step
/// without a unit is a remark and has no value.</remarks>
public sealed record DerivationStep(
    string Label, decimal Value, string Unit, Citation Cite, ImmutableArray<SpaceNumber> Spaces)
{
    public DerivationStep(string label, decimal value, string unit, Citation cite)
        : this(label, value, unit, cite, [])
    {
    }

    public bool IsRemark { get; private init; }

    /// <summary>Why there is no figure.</summary>
    public static DerivationStep Remark(string label, Citation cite) => new(label, 0, "", cite) { IsRemark = true };
}
