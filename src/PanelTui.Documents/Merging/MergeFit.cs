using System.Collections.Immutable;
using PanelTui.Documents.Reading;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Merging;

/// <summary>Whether the result of a merge can be one panel: it reads as a schedule, with no fault of place that neither side had.</summary>
/// <param name="Problem">What does not fit; null when everything does.</param>
/// <param name="Colliding">The other side's circuits that it is about.</param>
/// <param name="IsBroken">True when the merged text is not even YAML.</param>
internal sealed record MergeFit(string? Problem, ImmutableHashSet<int> Colliding, bool IsBroken = false)
{
    public const string NotReadBack = "the merged file could not be read back";

    private static readonly MergeFit Fits = new(null, []);

    private static readonly ImmutableArray<string> RulesOfPlace =
        ["space-taken-twice", "breaker-past-last-space", "more-poles-than-legs", "tandem-not-listed-here"];

    /// <summary>For versions without errors.</summary>
    public static MergeFit Of(MergedVersions versions, ScheduleMerge merge, MergeContext context)
    {
        if (Parsed(merge) is not { } tree) return new(NotReadBack, [], IsBroken: true);
        var merged = ScheduleReader.Read(tree);
        if (merged.Diagnostics.FirstOrDefault(found => found.IsError) is { } error)
            return new($"the merged file cannot be read as a schedule: {error.Message}", []);
        if (Faults(merged).FirstOrDefault(fault => !Has(versions.Ours, fault) && !Has(versions.Theirs, fault)) is not { } found)
            return MergeReferences.Problem(versions, merged) is { } loose ? new(loose, []) : Fits;
        var colliding = merged.Places.CircuitsAt(found.Spaces)
            .Select(circuit => circuit.Ordinal < context.Circuits.Count ? context.Circuits[circuit.Ordinal].Theirs : null)
            .OfType<int>();
        return new(found.Message, [.. colliding]);
    }

    /// <summary>True when the merged text is YAML, whichever side settles it.</summary>
    public static bool IsYaml(ScheduleMerge merge) => Parsed(merge) is not null;

    /// <summary>The merged text, settled by ours; null where it is not YAML, whichever side settles it.</summary>
    private static YamlTree? Parsed(ScheduleMerge merge)
    {
        try
        {
            var tree = YamlTree.Parse(merge.Settled());
            if (!merge.IsClean) YamlTree.Parse(merge.Settled(MergeSide.Theirs));
            return tree;
        }
        catch (YamlProblem)
        {
            return null;
        }
    }

    private static bool Has(ScheduleReading side, Finding fault) =>
        Faults(side).Any(one => one.Rule == fault.Rule && one.Message == fault.Message);

    private static IEnumerable<Finding> Faults(ScheduleReading version) => version.Schedule is { } schedule
        ? Assessment.Of(schedule).Findings.Where(finding => RulesOfPlace.Contains(finding.Rule))
        : [];
}
