using System.Collections.Immutable;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>What a merge has to come to, worked out on who is who and not on any text.</summary>
/// <param name="Ask">Why a person has to be asked; null when nobody has to be.</param>
/// <param name="Facts">What the merged schedule says, when nobody has to be asked.</param>
internal sealed record RightAnswer(string? Ask, ImmutableArray<string> Facts)
{
    public static RightAnswer Of(HiddenSchedule was, HiddenSchedule ours, HiddenSchedule theirs)
    {
        var asked = new List<string>();
        var bus = Pick("bus", was.Bus, ours.Bus, theirs.Bus, asked);
        var spaces = Pick("spaces", was.PanelSpaces, ours.PanelSpaces, theirs.PanelSpaces, asked);
        var (mine, other) = (new Recognition(was, ours), new Recognition(was, theirs));
        foreach (var circuit in was.Circuits)
        {
            if (ours.Find(circuit.Number) is { } one && theirs.Find(circuit.Number) is { } two && one.Fact == two.Fact) continue;
            var (ourClear, theirClear) = (mine.IsClear(circuit, ours), other.IsClear(circuit, theirs));
            if ((!ourClear && (!theirClear || IsTouched(circuit, theirs))) || (!theirClear && IsTouched(circuit, ours)))
                asked.Add($"nobody can tell what became of {circuit.Name}");
            else if (mine.MayHaveLeft(circuit) && other.MayHaveLeft(circuit) && (mine.HasNewWithoutId || other.HasNewWithoutId))
                asked.Add($"removed, or moved under a new name: the files say the same for {circuit.Name}");
        }

        var circuits = new[] { was, ours, theirs }.SelectMany(one => one.Circuits).Select(circuit => circuit.Number).Distinct()
            .Select(number => Circuit(was.Find(number), ours.Find(number), theirs.Find(number), asked))
            .OfType<HiddenCircuit>()
            .DistinctBy(circuit => was.Find(circuit.Number) is null ? circuit.Fact : $"{circuit.Number}")
            .ToImmutableArray();
        if (Added(was, ours).Any(one => Added(was, theirs).Any(two => two.Name != "Spare" && one.Name == two.Name))) asked.Add("one name was added twice");
        var scenarios = was.Scenarios.Select(scenario => Scenario(scenario, was, ours, theirs, asked)).ToImmutableArray();
        var merged = new HiddenSchedule(bus, spaces, circuits, scenarios);
        if (!merged.IsSound) asked.Add("two breakers in one space, or one past the last");
        if (scenarios.Any(scenario => scenario.Running.Any(number => merged.Find(number)?.Id is null))) asked.Add("a scenario names what is gone");
        return new(asked.FirstOrDefault(), merged.Facts);
    }

    private static IEnumerable<HiddenCircuit> Added(HiddenSchedule was, HiddenSchedule now) =>
        now.Circuits.Where(circuit => was.Find(circuit.Number) is null);

    private static bool IsTouched(HiddenCircuit was, HiddenSchedule now) =>
        now.Find(was.Number) is not { } kept || kept.Fact != was.Fact || kept.Note != was.Note;

    private static HiddenCircuit? Circuit(HiddenCircuit? was, HiddenCircuit? ours, HiddenCircuit? theirs, List<string> asked)
    {
        if (was is null) return ours ?? theirs;
        if (ours is null || theirs is null)
        {
            if ((ours ?? theirs) is { } left && (left.Fact != was.Fact || left.Note != was.Note)) asked.Add($"{was.Name} was removed and changed");
            return null;
        }

        T Of<T>(Func<HiddenCircuit, T> value) => Pick(was.Name, value(was), value(ours), value(theirs), asked);
        return new(was.Number, Of(one => one.Id), Of(one => one.Space), Of(one => one.Name), Of(one => one.Breaker), Of(one => one.Poles))
        {
            Wire = Of(one => one.Wire), Length = Of(one => one.Length), Loads = Loads(was, ours, theirs, asked),
        };
    }

    // Of loads the kind is all that tells one from another.
    private static ImmutableArray<HiddenLoad> Loads(HiddenCircuit was, HiddenCircuit ours, HiddenCircuit theirs, List<string> asked)
    {
        if (Said(ours) == Said(theirs) || Said(theirs) == Said(was)) return ours.Loads;
        if (Said(ours) == Said(was)) return theirs.Loads;
        var merged = new List<HiddenLoad>();
        foreach (var load in was.Loads)
        {
            var (mine, other) = (Find(ours, load), Find(theirs, load));
            var (isReplaced, isReplacedThere) = (mine is null && New(was, ours).Any(), other is null && New(was, theirs).Any());
            if ((isReplaced && other != load) || (isReplacedThere && mine != load) || (mine is null && other is not null && other != load)
                || (other is null && mine is not null && mine != load))
                asked.Add($"a load of {was.Name} was replaced or removed, and changed");
            if (mine is not null && other is not null)
            {
                merged.Add(new(load.Number, load.Kind, Pick("rating", load.Rating, mine.Rating, other.Rating, asked),
                    Pick("duty", load.Duty, mine.Duty, other.Duty, asked)));
            }
        }

        if (New(was, ours).Any(one => New(was, theirs).Any(two => two.Kind == one.Kind))) asked.Add("one kind of load was added twice");
        return [.. merged, .. New(was, ours), .. New(was, theirs)];
    }

    private static string Said(HiddenCircuit circuit) => string.Concat(circuit.Loads.Select(HiddenCircuit.LoadFact));

    private static HiddenLoad? Find(HiddenCircuit circuit, HiddenLoad load) => circuit.Loads.FirstOrDefault(one => one.Number == load.Number);

    private static IEnumerable<HiddenLoad> New(HiddenCircuit was, HiddenCircuit now) => now.Loads.Where(load => Find(was, load) is null);

    private static HiddenScenario Scenario(
        HiddenScenario scenario, HiddenSchedule was, HiddenSchedule ours, HiddenSchedule theirs, List<string> asked)
    {
        var (mine, other) = (Find(ours, scenario), Find(theirs, scenario));
        if (IsChanged(mine, other)
            && ((!IsClear(was, ours, scenario) && IsChanged(scenario, other)) || (!IsClear(was, theirs, scenario) && IsChanged(scenario, mine))))
            asked.Add($"nobody can tell which scenario {scenario.Name} is");
        var running = was.Circuits.Concat(ours.Circuits).Concat(theirs.Circuits).Select(circuit => circuit.Number).Distinct()
            .Where(number => scenario.Running.Contains(number)
                ? mine.Running.Contains(number) && other.Running.Contains(number)
                : mine.Running.Contains(number) || other.Running.Contains(number));
        return new(scenario.Number, Pick("name", scenario.Name, mine.Name, other.Name, asked), [.. running]);
    }

    private static bool IsChanged(HiddenScenario was, HiddenScenario now) => was.Name != now.Name || !was.Running.SequenceEqual(now.Running);

    // By its name, with nobody else running what it ran; or by what it runs, under a new name.
    private static bool IsClear(HiddenSchedule was, HiddenSchedule now, HiddenScenario scenario)
    {
        if (!IsChanged(scenario, Find(now, scenario))) return true;
        var runs = now.Scenarios.Where(one => one.Running.Length > 0 && one.Running.SequenceEqual(scenario.Running)).ToList();
        var ranBefore = was.Scenarios.Count(one => one.Running.SequenceEqual(scenario.Running));
        var isNamed = now.Scenarios.FirstOrDefault(one => one.Name == scenario.Name);
        if (isNamed is not null) return isNamed.Number == scenario.Number;
        return ranBefore == 1 && runs is [var only] && was.Scenarios.All(one => one.Name != only.Name);
    }

    private static HiddenScenario Find(HiddenSchedule now, HiddenScenario scenario) => now.Scenarios.First(one => one.Number == scenario.Number);

    private static T Pick<T>(string what, T was, T ours, T theirs, List<string> asked)
    {
        var same = EqualityComparer<T>.Default;
        if (!same.Equals(ours, theirs) && !same.Equals(ours, was) && !same.Equals(theirs, was)) asked.Add($"{what} was changed in two ways");
        return same.Equals(ours, was) ? theirs : ours;
    }
}
