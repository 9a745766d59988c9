using System.Collections.Immutable;

namespace PanelTui.CommandLine;

/// <summary>The verbs as help lists them: grouped by what a person is about to do.</summary>
internal static class VerbList
{
    private const int WordColumns = 11;

    private static readonly ImmutableArray<(string Task, ImmutableArray<string> Verbs)> Groups =
    [
        ("Begin", ["new"]),
        ("Check and reckon", ["check", "calc", "balance", "run", "rules"]),
        ("Compare", ["diff", "merge"]),
        ("Deliver", ["print", "transfer"]),
    ];

    /// <summary>Every verb once; those of no group are for setting things up.</summary>
    public static string Text
    {
        get
        {
            var grouped = Groups.SelectMany(group => group.Verbs).ToHashSet();
            var groups = Groups.Add(("Set up", [.. Verbs.All.Select(verb => verb.Name).Where(name => !grouped.Contains(name))]));
            return string.Join('\n', groups.SelectMany(group => Lines(group.Task, group.Verbs)));
        }
    }

    private static IEnumerable<string> Lines(string task, ImmutableArray<string> names) =>
        names.Select(name => Verbs.All.Single(verb => verb.Name == name))
            .Select(verb => $"  {verb.Name,-WordColumns} {verb.Summary}").Prepend($"{task}:");
}
