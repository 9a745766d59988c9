using System.Collections.Immutable;

namespace PanelTui.Engine.Derivations;

/// <summary>How a figure came about, from what the schedule says to the figure itself.</summary>
/// <remarks>The figure goes by one of the names that an assessment lists; the title is a heading for people.</remarks>
public sealed record Derivation(string Figure, string Title, ImmutableArray<DerivationStep> Steps);
