using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>One of several edits that are made at once: what is replaced in the text, and which node then means what.</summary>
/// <param name="Path">The node.</param>
/// <param name="Change">What it means afterwards.</param>
/// <param name="Edits">Counted in the text before any of the edits.</param>
internal sealed record PlannedEdit(YamlPath Path, Func<Meaning, Meaning> Change, ImmutableArray<TextEdit> Edits);
