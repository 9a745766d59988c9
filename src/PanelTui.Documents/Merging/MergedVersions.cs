using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Merging;

/// <summary>The three versions as what they say.</summary>
internal sealed class MergedVersions(SourceText ancestor, SourceText ours, SourceText theirs)
{
    private readonly Lazy<ScheduleReading> _ancestor = new(() => ScheduleReader.Read(ancestor));
    private readonly Lazy<ScheduleReading> _ours = new(() => ScheduleReader.Read(ours));
    private readonly Lazy<ScheduleReading> _theirs = new(() => ScheduleReader.Read(theirs));

    public ScheduleReading Ancestor => _ancestor.Value;

    public ScheduleReading Ours => _ours.Value;

    public ScheduleReading Theirs => _theirs.Value;

    /// <summary>Why the result of a merge cannot be checked; null when all three versions can be read.</summary>
    public string? WhyUnread() => Why(ours, Ours, "our version") ?? Why(theirs, Theirs, "the other version")
        ?? (string.IsNullOrWhiteSpace(ancestor.Text) ? null : Why(ancestor, Ancestor, "the common ancestor"));

    private static string? Why(SourceText source, ScheduleReading version, string which) =>
        version.Diagnostics.FirstOrDefault(found => found.IsError) is { } error
            ? $"the merge cannot be checked: {which} cannot be read, line {source.PositionOf(error.Span.Start).Line}: {error.Message}"
            : null;
}
