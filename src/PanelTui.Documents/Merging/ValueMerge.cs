using PanelTui.Documents.Comparing;
using PanelTui.Documents.Reading.Fields;
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
            if (IsSet(place) && mine.IsSequence && other.IsSequence && was is null or { IsSequence: true })
                return NameListMerge.Of(was, mine, other, mineText) is var merged ? (merged, merged) : default;
        }
        catch (CannotEdit)
        {
            return (mineText, otherText);
        }

        return (mineText, otherText);
    }

    // The hours of a day have an order; names in a list have none.
    private static bool IsSet(MergePlace place) =>
        FieldBook.Find(place.Pattern) is { Shape: FieldShape.List } field && field.Path != EnergyFields.Hourly.Path;
}
