using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Comparing;

public enum ChangeKind
{
    Added,
    Removed,

    /// <summary>A circuit that sits in another space.</summary>
    Moved,
    Changed,

    /// <summary>Nothing about the panel: comments, spelling, order or layout.</summary>
    Wording,
}

/// <summary>One fact that differs between two versions of a schedule.</summary>
/// <param name="Kind">What happened.</param>
/// <param name="Section">The top key of the file it belongs to, such as `circuits`; empty for the file as a whole.</param>
/// <param name="Subject">What it is about, such as `Well pump (space 5)`.</param>
/// <param name="Text">What happened, such as `breaker 20 A, was 15 A`.</param>
public sealed record ScheduleChange(ChangeKind Kind, string Section, string Subject, string Text)
{
    /// <summary>The circuit's spaces, now or, of one that was removed, before; empty for what is no circuit.</summary>
    public ImmutableArray<SpaceNumber> Spaces { get; init; } = [];

    /// <summary>The circuit's id, where it has one.</summary>
    public string? Id { get; init; }

    /// <summary>The key that changed, as the format's pages name it: `circuits[].breaker`.</summary>
    public string? Key { get; init; }

    /// <summary>The value as it was written; null where there was none, or for more than one value.</summary>
    public string? Before { get; init; }

    /// <summary>The value as it is written now; null where there is none, or for more than one value.</summary>
    public string? After { get; init; }

    /// <summary>The fact as one line.</summary>
    public override string ToString() => Subject.Length == 0 ? Text : $"{Subject}: {Text}";
}

/// <summary>The words for a kind of change.</summary>
public static class ChangeKindWords
{
    extension(ChangeKind kind)
    {
        /// <summary>As JSON writes it: `added`.</summary>
        public string Word => Row(kind).Word;

        /// <summary>Before a line of the comparison: `+`.</summary>
        public char Mark => Row(kind).Mark;
    }

    private static (string Word, char Mark) Row(ChangeKind kind) => kind switch
    {
        ChangeKind.Added => ("added", '+'),
        ChangeKind.Removed => ("removed", '-'),
        ChangeKind.Moved => ("moved", '>'),
        ChangeKind.Changed => ("changed", '~'),
        ChangeKind.Wording => ("wording", ' '),
        _ => throw Unnamed.Of(kind),
    };
}
