using System.Collections.Immutable;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>The steps of a merge: what needs none, the merge by meaning, and whether what came out fits together.</summary>
internal sealed class MergeSteps(SourceText ancestor, SourceText ours, SourceText theirs)
{
    private const int MostRounds = 4;

    private readonly MergedVersions _read = new(ancestor, ours, theirs);

    public ScheduleMerge Merge()
    {
        if (ours.Text == theirs.Text || theirs.Text == ancestor.Text) return Whole(ours);
        if (ours.Text == ancestor.Text) return Whole(ours.WithText(theirs.Text));
        if (NoYaml() is { } why) return new(ours, [], why);
        return _read.WhyUnread() is { } unread ? Asked(unread) : Rounds();
    }

    // What collides is asked for, which may make something else collide.
    private ScheduleMerge Rounds()
    {
        var held = ImmutableHashSet<int>.Empty;
        for (var round = 0; round < MostRounds; round++)
        {
            var context = new MergeContext(held);
            if (Try(context) is not { } merge) return WithoutKeys();
            var fit = MergeFit.Of(_read, merge, context);
            if (fit.IsBroken) return new(ours, [], fit.Problem);
            if (fit.Colliding.IsSubsetOf(held)) return fit.Problem is null || !merge.Conflicts.IsEmpty ? merge : Asked(fit.Problem);
            held = held.Union(fit.Colliding);
        }

        return Asked("what both sides changed does not fit together");
    }

    /// <summary>A merge that takes nothing from the other side without a question, since its result cannot be checked.</summary>
    private ScheduleMerge Asked(string why)
    {
        if (Try(new([], why)) is not { } merge) return WithoutKeys();
        if (!MergeFit.IsYaml(merge)) return new(ours, [], MergeFit.NotReadBack);
        return merge.IsClean && merge.Settled().Text != ours.Text ? AskedWhole(why) : merge;
    }

    private ScheduleMerge? Try(MergeContext context) =>
        new MappingMerge(context).Merge(Flat(ancestor), Flat(ours), Flat(theirs), MergePlace.Top) is { } pieces ? new(ours, pieces) : null;

    private ScheduleMerge WithoutKeys() => new(ours, [], "the file is not made of keys with values at the edge of their lines");

    /// <summary>The whole file is in question: no single line is to blame.</summary>
    private ScheduleMerge AskedWhole(string problem) =>
        new(ours, [new DisputedPiece(new(problem, "the schedule", Flat(ancestor), Flat(ours), Flat(theirs)))]);

    private static ScheduleMerge Whole(SourceText text) => new(text, [new KeptPiece(Flat(text))]);

    private string? NoYaml() =>
        Problem(ancestor, "the common ancestor") ?? Problem(ours, "our version") ?? Problem(theirs, "their version");

    private static string? Problem(SourceText source, string which)
    {
        try
        {
            YamlTree.Parse(source);
            return null;
        }
        catch (YamlProblem problem)
        {
            return $"{which} cannot be read: line {problem.Position.Line}, {problem.Message}";
        }
    }

    private static string Flat(SourceText source)
    {
        var text = LineBreaks.AsLf(source.Text);
        return text.Length == 0 || text.EndsWith('\n') ? text : text + "\n";
    }
}
