using System.Collections.Immutable;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>What came of reading a text as a schedule.</summary>
/// <param name="Tree">The text as YAML; null where it is none.</param>
/// <param name="Schedule">The facts, all of them, or nothing where there is an error.</param>
/// <param name="Diagnostics">In the order of the file, at most a hundred.</param>
/// <param name="Places">Where each fact stands.</param>
public sealed record ScheduleReading(
    YamlTree? Tree, Schedule? Schedule, ImmutableArray<Diagnostic> Diagnostics, SourceMap Places);
