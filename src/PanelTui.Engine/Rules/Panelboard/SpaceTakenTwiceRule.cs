using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>A space holds one breaker, or two halves of a tandem.</summary>
public sealed class SpaceTakenTwiceRule : CodeRule
{
    public override string Name => "space-taken-twice";

    public override Severity Severity => Severity.Error;

    public override string Summary => "No two breakers may take the same space.";

    public override string Why =>
        "Two breakers cannot sit in one place: one of the two entries is wrong, and every figure counts both.";

    public override string Advice => "Look which of the two is there, and move the other to open spaces.";

    /// <remarks>A breaker is held against the first one in the file that takes each of its spaces.</remarks>
    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var taken = new Dictionary<SpaceNumber, Circuit>();
        foreach (var circuit in context.Circuits)
        {
            foreach (var clash in Clashes(circuit, taken).GroupBy(pair => pair.Other.Ordinal))
                yield return Clash(context, circuit, clash.First().Other, [.. clash.Select(pair => pair.Space)]);
            foreach (var space in circuit.Spaces)
                taken.TryAdd(space, circuit);
        }
    }

    private static IEnumerable<(SpaceNumber Space, Circuit Other)> Clashes(
        Circuit circuit, Dictionary<SpaceNumber, Circuit> taken) =>
        from space in circuit.Spaces
        from half in Enum.GetValues<SpaceHalf>()
        let other = space.With(half)
        where other.Overlaps(space) && taken.ContainsKey(other)
        select (space, taken[other]);

    private Finding Clash(RuleContext context, Circuit circuit, Circuit other, SpaceNumber[] shared) => Found(
        context,
        shared,
        $"{RuleWords.Place(circuit)} takes space {string.Join(" and ", shared)}, which {RuleWords.Place(other)} takes already.");
}
