using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>What a starting power rests on, before a soft starter takes its part.</summary>
/// <param name="AcrossTheLine">Of one of those alike.</param>
/// <param name="Words">In words, with the figures: `code K, 8 to 8.99 kVA/hp x 1 hp`.</param>
/// <param name="Cite">The table, the nameplate, or common practice.</param>
public sealed record StartBasis(VoltAmperes AcrossTheLine, string Words, Citation Cite);
