using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Derivations;

/// <summary>One line of how a figure came about. The value is exact; rounding is left to whoever shows it.</summary>
/// <remarks>The unit is `VA`, `A`, `%`, `W`, `V`, `C`, `ft`, `ohm/kft`, `Wh`, `h` or `s`; the spaces are the breakers it comes from, and may be none.</remarks>
public sealed record DerivationStep(
    string Label, decimal Value, string Unit, Citation Cite, ImmutableArray<SpaceNumber> Spaces)
{
    public DerivationStep(string label, decimal value, string unit, Citation cite)
        : this(label, value, unit, cite, [])
    {
    }
}
