using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Where in the format a merge is at, and what it is about.</summary>
/// <param name="Pattern">As the format's pages name it: `circuits[].breaker`; empty at the top.</param>
/// <param name="Subject">In the words of a conflict: `Well pump (space 5)`.</param>
/// <param name="HoldsPlace">Whether the other side's space and poles are to be asked for, since they collide.</param>
internal sealed record MergePlace(string Pattern, string Subject, bool HoldsPlace = false)
{
    public static readonly MergePlace Top = new("", "the schedule");

    /// <summary>The key that a conflict speaks of: `breaker`; `it` for a whole entry.</summary>
    public string Label => Pattern.EndsWith("[]", StringComparison.Ordinal)
        ? "it"
        : Pattern[(Pattern.LastIndexOf('.') + 1)..].Replace('_', ' ');

    /// <summary>What an entry of this list is called: `circuit`.</summary>
    public string EntryNoun => Pattern switch
    {
        "circuits[]" => "circuit",
        "circuits[].loads[]" => "load",
        "scenarios[]" => "scenario",
        "accepted[]" => "accepted finding",
        _ => "entry",
    };

    public MergePlace Key(string key) => this with
    {
        Pattern = Pattern.Length == 0 ? key : $"{Pattern}.{key}",
        Subject = Pattern.Length == 0 ? key : Subject,
    };

    public MergePlace Entry(YamlNode value, bool holdsPlace) => this with
    {
        Pattern = $"{Pattern}[]",
        Subject = Pattern switch
        {
            "circuits" => CircuitWords.Name(value),
            "scenarios" => EntryChanges.Scenario(value),
            "accepted" => EntryChanges.Acceptance(value),
            "circuits[].loads" => $"{Subject}, {CircuitWords.Load(value)}",
            _ => Subject,
        },
        HoldsPlace = holdsPlace,
    };

    /// <summary>Whether a value that only the other side changed is to be asked for all the same.</summary>
    public bool IsHeld(string key) => HoldsPlace && Pattern == "circuits[]" && key is "space" or "poles";

    public MergeConflict Conflict(string what, string ancestor, string ours, string theirs) =>
        new(what, Subject, ancestor, ours, theirs);
}
