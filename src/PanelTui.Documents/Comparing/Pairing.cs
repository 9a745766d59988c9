using System.Collections.Immutable;

namespace PanelTui.Documents.Comparing;

/// <summary>
/// Which entry of one version is which of the other: by name, then by one mark after the other, and by each only where
/// it is the only one on both sides.
/// </summary>
internal sealed class Pairing
{
    private readonly int[] _after;
    private readonly int[] _before;

    private Pairing(int before, int after)
    {
        _after = [.. Enumerable.Repeat(-1, before)];
        _before = [.. Enumerable.Repeat(-1, after)];
    }

    /// <summary>The partner in the later version; null for an entry that is gone.</summary>
    public int? After(int before) => _after[before] < 0 ? null : _after[before];

    /// <summary>The partner in the earlier version; null for an entry that is new.</summary>
    public int? Before(int after) => _before[after] < 0 ? null : _before[after];

    public static Pairing Of(ImmutableArray<Identity> before, ImmutableArray<Identity> after)
    {
        var pairing = new Pairing(before.Length, after.Length);
        pairing.Pass(before, after, identity => identity.Name, (_, _) => true);
        var marks = before.Concat(after).Select(identity => identity.Marks.Length).DefaultIfEmpty().Max();
        for (var mark = 0; mark < marks; mark++)
        {
            var which = mark;
            pairing.Pass(before, after, identity => identity.Marks[which], (one, other) => May(one, other, which));
        }

        return pairing;
    }

    // Two names of their own make two entries, unless a surer mark says that one was renamed.
    private static bool May(Identity one, Identity other, int mark) =>
        one.Name is null || other.Name is null || mark == one.OutweighsName;

    private void Pass(
        ImmutableArray<Identity> before, ImmutableArray<Identity> after, Func<Identity, string?> key, Func<Identity, Identity, bool> may)
    {
        var left = OnlyOnes(before, key, _after);
        var right = OnlyOnes(after, key, _before);
        foreach (var (mark, one) in left)
        {
            if (!right.TryGetValue(mark, out var other) || !may(before[one], after[other])) continue;
            _after[one] = other;
            _before[other] = one;
        }
    }

    private static Dictionary<string, int> OnlyOnes(ImmutableArray<Identity> all, Func<Identity, string?> key, int[] taken) =>
        Enumerable.Range(0, all.Length)
            .Where(index => taken[index] < 0 && key(all[index]) is not null)
            .GroupBy(index => key(all[index])!)
            .Where(group => group.Count() == 1)
            .ToDictionary(group => group.Key, group => group.Single());
}
