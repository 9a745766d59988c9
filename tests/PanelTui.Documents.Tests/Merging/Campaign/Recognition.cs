using System.Collections.Immutable;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>What a careful person makes of two versions without knowing what was done: docs/git.md's rule, tried on each pair.</summary>
internal sealed class Recognition
{
    private readonly ImmutableArray<HiddenCircuit> _old;
    private readonly ImmutableArray<HiddenCircuit> _now;
    private readonly Dictionary<HiddenCircuit, HiddenCircuit> _known = [];

    public Recognition(HiddenSchedule old, HiddenSchedule now)
    {
        (_old, _now) = (old.Circuits, now.Circuits);
        Know((one, other) => one.Id is not null && one.Id == other.Id);
        Know((one, other) => one.Fact == other.Fact);
        Know((one, other) => AgreeInName(one, other) && (one.Space == other.Space || (AgreeInLoads(one, other) && !HaveTwoIds(one, other))));
        var (oldNames, newNames) = (NamesLeft(_old, _known.Keys), NamesLeft(_now, _known.Values));
        Know((one, other) => one.Space == other.Space && AgreeInLoads(one, other) && !HaveTwoIds(one, other)
            && !newNames.Any(left => left != other && left.Name == one.Name) && !oldNames.Any(left => left != one && left.Name == other.Name));
        var (before, after) = (NamesLeft(_old, _known.Keys), NamesLeft(_now, _known.Values));
        Know((one, other) => AgreeInName(one, other) && !HaveTwoIds(one, other) && one.Id is null == other.Id is null
            && !before.Any(left => left != one && (left.Space == other.Space || AgreeInLoads(left, other)))
            && !after.Any(left => left != other && (left.Space == one.Space || AgreeInLoads(one, left))));
    }

    /// <summary>True when somebody who reads both versions knows what became of it: it is there, or it is gone.</summary>
    public bool IsClear(HiddenCircuit old, HiddenSchedule now) => _known.ContainsKey(old)
        || (now.Find(old.Number) is null && !_now.Except(_known.Values).Any(other => MayBe(old, other)));

    /// <summary>True for one without an id that is not found again under any mark.</summary>
    public bool MayHaveLeft(HiddenCircuit old) => old.Id is null && !_known.ContainsKey(old);

    /// <summary>True when something is there that was nothing before, as far as the file tells.</summary>
    public bool HasNewWithoutId => _now.Except(_known.Values).Any(other => other.Id is null);

    /// <summary>True when what the files tell is not what was done: then no reader can be right but by luck.</summary>
    public bool IsMisled => _known.Any(pair => pair.Key.Number != pair.Value.Number);

    private static bool MayBe(HiddenCircuit one, HiddenCircuit other) => (one.Id is null || other.Id is null)
        && (one.Name == other.Name || one.Space == other.Space || (!one.Loads.IsEmpty && Loads(one) == Loads(other)));

    private void Know(Func<HiddenCircuit, HiddenCircuit, bool> isOne)
    {
        var found = (from one in _old.Except(_known.Keys) from other in _now.Except(_known.Values) where isOne(one, other) select (one, other)).ToList();
        foreach (var (one, other) in found) _known.TryAdd(one, other);
    }

    // A name that a known circuit has kept is spoken for.
    private List<HiddenCircuit> NamesLeft(ImmutableArray<HiddenCircuit> all, IEnumerable<HiddenCircuit> known)
    {
        var kept = _known.Where(pair => pair.Key.Name == pair.Value.Name).SelectMany(pair => new[] { pair.Key, pair.Value }).ToHashSet();
        return [.. all.Where(circuit => !known.Contains(circuit) || !kept.Contains(circuit))];
    }

    private bool AgreeInName(HiddenCircuit one, HiddenCircuit other) => one.Name == other.Name
        && _old.Count(circuit => circuit.Name == one.Name) == 1 && _now.Count(circuit => circuit.Name == one.Name) == 1;

    private bool AgreeInLoads(HiddenCircuit one, HiddenCircuit other) => !one.Loads.IsEmpty && Loads(one) == Loads(other)
        && _old.Count(circuit => Loads(circuit) == Loads(one)) == 1 && _now.Count(circuit => Loads(circuit) == Loads(one)) == 1;

    private static bool HaveTwoIds(HiddenCircuit one, HiddenCircuit other) => one.Id is not null && other.Id is not null && one.Id != other.Id;

    private static string Loads(HiddenCircuit circuit) => string.Concat(circuit.Loads.Select(HiddenCircuit.LoadFact));
}
