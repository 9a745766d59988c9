using System.Text.RegularExpressions;
using PanelTui.Documents.Reading;

namespace PanelTui.Documents.Intents;

/// <summary>
/// The errors that a change brings into a file; those that were there before are no reason to refuse it.
/// </summary>
internal static partial class NewErrors
{
    public static string? First(Snapshot before, Snapshot after)
    {
        if (!after.HasErrors) return null;
        var known = Errors(before).GroupBy(Key).ToDictionary(group => group.Key, group => group.Count());
        foreach (var error in Errors(after))
        {
            var left = known.GetValueOrDefault(Key(error));
            if (left == 0) return error.Message;
            known[Key(error)] = left - 1;
        }

        return null;
    }

    private static IEnumerable<Diagnostic> Errors(Snapshot snapshot) =>
        snapshot.Diagnostics.Where(found => found.IsError);

    /// <summary>The sentence without line numbers, which shift when lines come and go.</summary>
    private static string Key(Diagnostic error) => LineNumber().Replace(error.Message, "line");

    [GeneratedRegex(@"\bline \d+")]
    private static partial Regex LineNumber();
}
