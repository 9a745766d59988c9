using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Merging;

/// <summary>Whether what came of a merge can be one panel: no fault of place that neither side had.</summary>
/// <param name="Problem">What does not fit; null where everything does.</param>
/// <param name="Colliding">The other side's circuits that it is about.</param>
/// <param name="IsBroken">Whether the merged text is not even YAML.</param>
internal sealed record MergeFit(string? Problem, ImmutableHashSet<int> Colliding, bool IsBroken = false)
{
    private static readonly MergeFit Fits = new(null, []);

    private static readonly ImmutableArray<string> RulesOfPlace =
        ["space-taken-twice", "breaker-past-last-space", "more-poles-than-legs", "tandem-not-listed-here"];

    public static MergeFit Of(SourceText ours, SourceText theirs, ScheduleMerge merge, MergeContext context)
    {
        if (Read(merge) is not { } merged) return new("the merged file could not be read back", [], IsBroken: true);
        var error = merged.Diagnostics.FirstOrDefault(found => found.IsError);
        if (error is null && !Faults(merged).Any()) return Fits;
        var (mine, other) = (Snapshot.Of(ours), Snapshot.Of(theirs));
        if (error is not null)
            return mine.HasErrors || other.HasErrors ? Fits : new($"the merged file cannot be read as a schedule: {error.Message}", []);
        if (Faults(merged).FirstOrDefault(fault => !Has(mine, fault) && !Has(other, fault)) is not { } found) return Fits;
        var colliding = merged.Places.CircuitsAt(found.Spaces)
            .Select(circuit => circuit.Ordinal < context.Circuits.Count ? context.Circuits[circuit.Ordinal].Theirs : null)
            .OfType<int>();
        return new(found.Message, [.. colliding]);
    }

    private static Snapshot? Read(ScheduleMerge merge)
    {
        try
        {
            var tree = YamlTree.Parse(merge.Settled());
            if (!merge.IsClean) YamlTree.Parse(merge.Settled(MergeSide.Theirs));
            return Snapshot.Of(tree);
        }
        catch (YamlProblem)
        {
            return null;
        }
    }

    private static bool Has(Snapshot side, Finding fault) =>
        Faults(side).Any(one => one.Rule == fault.Rule && one.Message == fault.Message);

    private static IEnumerable<Finding> Faults(Snapshot version) =>
        (version.Assessment?.Findings ?? []).Where(finding => RulesOfPlace.Contains(finding.Rule));
}
