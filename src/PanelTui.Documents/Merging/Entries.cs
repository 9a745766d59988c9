using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>One entry of a list in the three versions.</summary>
internal sealed record Entry(Chunk? Was, Chunk? Mine, Chunk? Other, int? OurIndex, int? TheirIndex);

/// <summary>The entries of a list in three versions, each with its counterparts.</summary>
internal sealed class Entries
{
    private readonly List<Entry> _all = [];
    private readonly Dictionary<int, int> _ours = [];
    private readonly Dictionary<int, int> _theirs = [];
    private int _ancestors;

    public static Entries Of(Chunks was, Chunks mine, Chunks other, Func<YamlNode, int, Identity> identity)
    {
        var (old, ours, theirs) = (Identities(was, identity), Identities(mine, identity), Identities(other, identity));
        var (toOurs, toTheirs) = (Pairing.Of(old, ours), Pairing.Of(old, theirs));
        var entries = new Entries { _ancestors = old.Length };
        for (var index = 0; index < old.Length; index++)
            entries.Add(was.All[index], toOurs.After(index), toTheirs.After(index), mine, other);
        int[] oursNew = [.. Enumerable.Range(0, ours.Length).Where(index => toOurs.Before(index) is null)];
        int[] theirsNew = [.. Enumerable.Range(0, theirs.Length).Where(index => toTheirs.Before(index) is null)];
        var both = Pairing.Of([.. oursNew.Select(index => WithoutPlace(ours[index]))], [.. theirsNew.Select(index => WithoutPlace(theirs[index]))]);
        for (var index = 0; index < oursNew.Length; index++)
            entries.Add(null, oursNew[index], both.After(index) is { } same ? theirsNew[same] : null, mine, other);
        for (var index = 0; index < theirsNew.Length; index++)
        {
            if (both.Before(index) is null) entries.Add(null, null, theirsNew[index], mine, other);
        }

        return entries;
    }

    public IEnumerable<Entry> InOrder()
    {
        ImmutableArray<int> ours = [.. _ours.OrderBy(pair => pair.Key).Select(pair => pair.Value)];
        ImmutableArray<int> theirs = [.. _theirs.OrderBy(pair => pair.Key).Select(pair => pair.Value)];
        return ItemOrder.Merged([.. Enumerable.Range(0, _ancestors)], ours, theirs).Select(index => _all[index]);
    }

    private void Add(Chunk? was, int? ours, int? theirs, Chunks mine, Chunks other)
    {
        if (ours is { } one) _ours[one] = _all.Count;
        if (theirs is { } two) _theirs[two] = _all.Count;
        _all.Add(new(was, ours is { } m ? mine.All[m] : null, theirs is { } t ? other.All[t] : null, ours, theirs));
    }

    // Two new entries are not one because they stand in the same place.
    private static Identity WithoutPlace(Identity identity) =>
        identity with { Marks = [.. identity.Marks.Select((mark, index) => index < 2 ? mark : null)] };

    private static ImmutableArray<Identity> Identities(Chunks chunks, Func<YamlNode, int, Identity> identity) =>
        [.. chunks.All.Select((chunk, index) => identity(chunk.Value, index))];
}
