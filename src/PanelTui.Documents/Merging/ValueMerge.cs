using PanelTui.Documents.Comparing;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Merges one value, or what stands in brackets: the text for either side, the same where nothing is in doubt.</summary>
internal static class ValueMerge
{
    public static (string Ours, string Theirs) Of(
        YamlNode? was, YamlNode mine, YamlNode other, MergePlace place, string mineText, string otherText)
    {
        if (Likeness.Same(mine, other) || (was is not null && Likeness.Same(other, was))) return (mineText, mineText);
        var isHeld = place is { HoldsPlace: true, Pattern: "circuits[]" };
        if (!isHeld && was is not null && Likeness.Same(mine, was)) return (otherText, otherText);
        try
        {
            if (mine.IsMapping && other.IsMapping && was is null or { IsMapping: true })
                return new FlowMerge(place).Merge(was, mine, other, mineText);
            if (NameListMerge.IsSet(place.Pattern) && mine.IsSequence && other.IsSequence && was is null or { IsSequence: true })
                return NameListMerge.Edits(was, mine, other, YamlPath.Root).Aggregate(mineText, FlowMerge.Edited) is var merged ? (merged, merged) : default;
        }
        catch (CannotEdit)
        {
            return (mineText, otherText);
        }

        return (mineText, otherText);
    }
}
