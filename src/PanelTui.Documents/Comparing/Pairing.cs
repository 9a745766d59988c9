using System.Collections.Immutable;

namespace PanelTui.Documents.Comparing;

/// <summary>Which entry of one version is which of the other, as far as the file tells. It never guesses.</summary>
/// <remarks>
/// A mark is the id, the name, the body (the loads of a circuit) or the place (its space). A mark counts only when it is stated and no
/// other entry of its version has it. Two entries are one when, in this order,
/// <list type="number">
/// <item>the id agrees, or everything does;</item>
/// <item>the name agrees, and the place or the body with it;</item>
/// <item>place and body agree, and neither name is found on another entry: a circuit renamed in its space;</item>
/// <item>the name alone agrees, and no other entry has the place or the body of either: a circuit moved and changed.</item>
/// </list>
/// Everything else is left without a partner. <see cref="Doubts"/> lists what may be one all the same. Two different ids make two
/// entries, unless name and place agree.
/// Cost: O(n) dictionary steps for n entries, beside the text of the marks.
/// </remarks>
internal sealed class Pairing
{
    private readonly ImmutableArray<Identity> _old;
    private readonly ImmutableArray<Identity> _now;
    private readonly int[] _after;
    private readonly int[] _before;
    private readonly Agreement _names;
    private readonly Agreement _bodies;
    private readonly Agreement _places;

    private Pairing(ImmutableArray<Identity> before, ImmutableArray<Identity> after)
    {
        (_old, _now) = (before, after);
        _after = [.. Enumerable.Repeat(-1, before.Length)];
        _before = [.. Enumerable.Repeat(-1, after.Length)];
        _names = new(before, after, identity => identity.Name);
        _bodies = new(before, after, identity => identity.Body);
        _places = new(before, after, identity => identity.Place);
    }

    /// <summary>The partner in the later version; null for an entry that is gone or not recognized.</summary>
    public int? After(int before) => _after[before] < 0 ? null : _after[before];

    /// <summary>The partner in the earlier version; null for an entry that is new or not recognized.</summary>
    public int? Before(int after) => _before[after] < 0 ? null : _before[after];

    public IEnumerable<(int Before, int After)> Pairs() =>
        Enumerable.Range(0, _after.Length).Where(before => _after[before] >= 0).Select(before => (before, _after[before]));

    public static Pairing Of(ImmutableArray<Identity> before, ImmutableArray<Identity> after)
    {
        var pairing = new Pairing(before, after);
        var (ids, all) = (new Agreement(before, after, identity => identity.Id), new Agreement(before, after, identity => identity.All));
        pairing.Take(ids.After);
        pairing.Take(all.After);
        pairing.Take(pairing.ByNameAndMore);
        var (oldNames, newNames) = (Taken(before, pairing._after, after), Taken(after, pairing._before, before));
        pairing.Take(old => pairing.ByBody(old, oldNames, newNames));
        pairing.Take(pairing.ByNameAlone);
        return pairing;
    }

    /// <summary>Entries without a partner that share a hint, each with its earlier and later place; enough of them to join all that do.</summary>
    public IEnumerable<(int Before, int After)> Doubts() => Links.Between(Open(_old, _after), Open(_now, _before));

    private static ImmutableArray<(int Index, Identity Identity)> Open(ImmutableArray<Identity> all, int[] partners) =>
        [.. Enumerable.Range(0, all.Length).Where(index => partners[index] < 0).Select(index => (index, all[index]))];

    // All are chosen before any is taken, so that the order of the entries decides nothing.
    private void Take(Func<int, int> partnerOf)
    {
        var chosen = Enumerable.Range(0, _after.Length)
            .Where(old => _after[old] < 0)
            .Select(old => (Old: old, Now: partnerOf(old)))
            .Where(pair => pair.Now >= 0 && _before[pair.Now] < 0)
            .ToList();
        foreach (var (old, now) in chosen) (_after[old], _before[now]) = (now, old);
    }

    private int ByNameAndMore(int old)
    {
        var now = _names.After(old);
        if (now < 0) return -1;
        if (_places.After(old) == now) return now;
        return _bodies.After(old) == now && !HaveTwoIds(old, now) ? now : -1;
    }

    private int ByBody(int old, HashSet<string> oldNames, HashSet<string> newNames)
    {
        var now = _bodies.After(old);
        if (now < 0 || HaveTwoIds(old, now) || !(_old[old].BodySuffices || _places.After(old) == now)) return -1;
        var (was, name) = (_old[old].Name, _now[now].Name);
        var isElsewhere = was != name && (newNames.Contains(was ?? "") || oldNames.Contains(name ?? ""));
        return isElsewhere ? -1 : now;
    }

    private int ByNameAlone(int old)
    {
        var now = _names.After(old);
        if (now < 0 || _old[old].Id is null != _now[now].Id is null || HaveTwoIds(old, now)) return -1;
        return HasRival(_places, old, now) || HasRival(_bodies, old, now) ? -1 : now;
    }

    private bool HasRival(Agreement marks, int old, int now) =>
        (marks.After(old) is >= 0 and var other && other != now && _before[other] < 0)
        || (marks.Before(now) is >= 0 and var another && another != old && _after[another] < 0);

    private bool HaveTwoIds(int old, int now) => _old[old].Id is { } one && _now[now].Id is { } two && one != two;

    /// <summary>The names that an entry has whose partner has another name, or that has no partner.</summary>
    private static HashSet<string> Taken(ImmutableArray<Identity> all, int[] partners, ImmutableArray<Identity> others) =>
    [
        .. Enumerable.Range(0, all.Length)
            .Where(index => partners[index] < 0 || others[partners[index]].Name != all[index].Name)
            .Select(index => all[index].Name)
            .OfType<string>(),
    ];
}
