using System.Collections.Immutable;

namespace PanelTui.Documents.Comparing;

/// <summary>Joins entries of two versions that share a hint, by as few links as join them all.</summary>
internal static class Links
{
    public static IEnumerable<(int Left, int Right)> Between(
        ImmutableArray<(int Index, Identity Identity)> left, ImmutableArray<(int Index, Identity Identity)> right)
    {
        var others = ByHint(right);
        foreach (var (hint, some) in ByHint(left))
        {
            if (!others.TryGetValue(hint, out var more)) continue;
            // Two ids make two entries: at least one of the two has none.
            foreach (var link in Star(some, [.. more.Where(entry => entry.Identity.Id is null)])) yield return link;
            foreach (var link in Star([.. some.Where(entry => entry.Identity.Id is null)], more)) yield return link;
        }
    }

    private static Dictionary<string, ImmutableArray<(int Index, Identity Identity)>> ByHint(
        ImmutableArray<(int Index, Identity Identity)> entries) =>
        entries.SelectMany(entry => entry.Identity.Hints.Select(hint => (Hint: hint, Entry: entry)))
            .GroupBy(pair => pair.Hint, pair => pair.Entry)
            .ToDictionary(group => group.Key, group => group.ToImmutableArray());

    private static IEnumerable<(int Left, int Right)> Star(
        ImmutableArray<(int Index, Identity Identity)> left, ImmutableArray<(int Index, Identity Identity)> right)
    {
        if (left.IsEmpty || right.IsEmpty) yield break;
        foreach (var (index, _) in left) yield return (index, right[0].Index);
        foreach (var (index, _) in right.Skip(1)) yield return (left[0].Index, index);
    }
}
