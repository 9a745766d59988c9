using System.Collections.Immutable;
using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents;

/// <summary>
/// One version of a file and all that follows from its text. Immutable; the text alone decides the rest.
/// </summary>
public sealed class Snapshot
{
    private Snapshot(SourceText source, ScheduleReading reading)
    {
        Source = source;
        Tree = reading.Tree;
        Schedule = reading.Schedule;
        Places = reading.Places;
        Assessment = reading.Schedule is null ? null : Assessment.Of(reading.Schedule);
        Diagnostics = Assessment is null
            ? reading.Diagnostics
            : IdleAcceptances.NotedIn(reading.Diagnostics, Assessment, Places);
    }

    public SourceText Source { get; }

    /// <summary>The text as YAML; null where it is none.</summary>
    public YamlTree? Tree { get; }

    /// <summary>The facts; null where a diagnostic is an error.</summary>
    public Schedule? Schedule { get; }

    /// <summary>In the order of the file, at most a hundred.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; }

    /// <summary>Where each fact stands in the text.</summary>
    public SourceMap Places { get; }

    /// <summary>Everything that follows for the panel; null where there is no schedule.</summary>
    public Assessment? Assessment { get; }

    public bool HasErrors => Schedule is null;

    /// <summary>A pure function; it never throws on what a user wrote.</summary>
    public static Snapshot Of(SourceText source) => new(source, ScheduleReader.Read(source));

    /// <summary>The same of a text that has been read as YAML already.</summary>
    internal static Snapshot Of(YamlTree tree) => new(tree.Source, ScheduleReader.Read(tree));
}
