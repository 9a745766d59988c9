namespace PanelTui.Documents.Merging;

/// <summary>The three versions as what they say.</summary>
internal sealed record MergedVersions(Snapshot Ancestor, Snapshot Ours, Snapshot Theirs);
