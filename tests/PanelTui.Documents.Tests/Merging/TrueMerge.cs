using System.Collections.Immutable;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>What a merge should come to, worked out on facts alone.</summary>
/// <param name="HasConflict">Whether a person has to be asked.</param>
/// <param name="Facts">One line for each circuit, and the bus, in no order, where nobody has to be asked.</param>
internal sealed record TrueMerge(bool HasConflict, ImmutableArray<string> Facts)
{
    public static TrueMerge Of(Truth was, Truth ours, Truth theirs)
    {
        var asked = false;
        var bus = Pick(was.Bus, ours.Bus, theirs.Bus, ref asked);
        var circuits = new List<TrueCircuit>();
        foreach (var number in new[] { was, ours, theirs }.SelectMany(truth => truth.Circuits).Select(circuit => circuit.Number).Distinct())
        {
            if (Circuit(Find(was, number), Find(ours, number), Find(theirs, number), ref asked) is { } circuit) circuits.Add(circuit);
        }

        // A panel where two breakers stood in one space before is nobody's news.
        asked |= Doubles(circuits) > Math.Max(Doubles(ours.Circuits), Doubles(theirs.Circuits));
        return new(asked, Of(bus, circuits));
    }

    public static ImmutableArray<string> Of(int bus, IEnumerable<TrueCircuit> circuits) =>
        [$"bus {bus} A", .. circuits.Select(circuit => $"{circuit.Space} {circuit.Name} {circuit.Breaker} A {circuit.Watts} W").Order(StringComparer.Ordinal)];

    private static int Doubles(IReadOnlyCollection<TrueCircuit> circuits) =>
        circuits.Count - circuits.Select(circuit => circuit.Space).Distinct().Count();

    private static TrueCircuit? Circuit(TrueCircuit? was, TrueCircuit? ours, TrueCircuit? theirs, ref bool asked)
    {
        if (was is null) return ours ?? theirs;
        if (ours is null || theirs is null)
        {
            asked |= (ours ?? theirs) is { } left && left with { Note = null } != was with { Note = null };
            return null;
        }

        return new(
            was.Number,
            Pick(was.Space, ours.Space, theirs.Space, ref asked),
            Pick(was.Name, ours.Name, theirs.Name, ref asked),
            Pick(was.Breaker, ours.Breaker, theirs.Breaker, ref asked),
            Pick(was.Watts, ours.Watts, theirs.Watts, ref asked),
            null);
    }

    private static T Pick<T>(T was, T ours, T theirs, ref bool asked)
    {
        var same = EqualityComparer<T>.Default;
        asked |= !same.Equals(ours, theirs) && !same.Equals(ours, was) && !same.Equals(theirs, was);
        return same.Equals(ours, was) ? theirs : ours;
    }

    private static TrueCircuit? Find(Truth truth, int number) => truth.Circuits.FirstOrDefault(circuit => circuit.Number == number);
}
