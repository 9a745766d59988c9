using System.Globalization;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>How a figure came about, line by line: what went in, its value, and the section it rests on.</summary>
internal static class DerivationText
{
    private const int LabelColumns = 58;

    public static IEnumerable<string> Of(Derivation derivation) =>
        derivation.Steps.Select(Line).Prepend(DisplayText.Clean(derivation.Title));

    /// <summary>How many decimals a step is shown with: powers to the volt-ampere.</summary>
    public static int DecimalsOf(DerivationStep step) => step.Unit switch { "VA" or "W" or "Wh" => 0, "ohm/kft" => 4, _ => 2 };

    /// <summary>The value of a step with its unit, rounded for show; a remark has none.</summary>
    public static string Value(DerivationStep step) =>
        step.IsRemark ? "" : Shown.Rounded(step.Value, DecimalsOf(step), step.Unit);

    private static string Line(DerivationStep step)
    {
        var where = step.Spaces.IsEmpty ? "" : $"  (space {string.Join(", ", step.Spaces)})";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"  {Padded(DisplayText.Clean(step.Label))} {Value(step),12}   {step.Cite}{where}");
    }

    /// <summary>To a common column where it is short enough; a long label is never cut.</summary>
    private static string Padded(string label) => DisplayText.Width(label) < LabelColumns ? DisplayText.Fit(label, LabelColumns) : label;
}
