using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>
/// Notes keys that the format does not have. They stay in the file; a mistyped one would be missed otherwise.
/// </summary>
internal static class UnknownKeys
{
    public static void Note(
        IEnumerable<EffectiveEntry> entries, ImmutableArray<Field> known, string subject, DiagnosticList diagnostics)
    {
        foreach (var entry in entries)
        {
            if (known.Any(field => field.Key == entry.Key)) continue;
            diagnostics.Note(
                DiagnosticCodes.UnknownKey,
                entry.Pair.Key.Span,
                $"{subject} has the key {Quoted.Of(entry.Key)}, which the format does not have "
                + "and this program keeps as it is",
                () => Hint(entry, known));
        }
    }

    private static string Hint(EffectiveEntry entry, ImmutableArray<Field> known)
    {
        if (entry.Pair.ColonOffset is null) return "; a comma inside braces ends the value before it";
        string[] keys = [.. known.Select(field => field.Key)];
        return LookAlikes.WhyNot(entry.Key, keys) is { } why ? $"; {why}" : DidYouMean.Hint(entry.Key, keys);
    }
}
