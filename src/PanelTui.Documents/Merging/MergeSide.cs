namespace PanelTui.Documents.Merging;

/// <summary>One of the two versions that are merged.</summary>
public enum MergeSide
{
    Ours,
    Theirs,
}
