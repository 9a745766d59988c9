using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Editing;

/// <summary>How the line of a circuit's loads may go on: a kind, a rating with its unit, a key, a word for the key.</summary>
internal static class LoadOffers
{
    private const string Owner = "circuits[].loads[]";

    public static ImmutableArray<string> Of(string typed)
    {
        var begin = typed.AsSpan().LastIndexOfAny(',', ';') + 1;
        while (begin < typed.Length && typed[begin] == ' ') begin++;
        var isFirst = begin == 0 || typed[..begin].TrimEnd().EndsWith(';');
        return [.. Part(typed[begin..], isFirst).Select(part => typed[..begin] + part)];
    }

    /// <summary>A kind with its rating, or a key with its value.</summary>
    private static IEnumerable<string> Part(string part, bool isFirst)
    {
        var blank = part.IndexOf(' ', StringComparison.Ordinal);
        if (blank < 0)
        {
            return FieldOffers.Matching(
                isFirst ? Field("kind").Allowed : FieldBook.Of(Owner).Select(field => field.Key).Where(key => key is not ("kind" or "rating")), part);
        }

        var (head, tail) = (part[..blank], part[(blank + 1)..].Trim());
        if (FieldBook.Find($"{Owner}.{(isFirst ? "rating" : head)}") is not { } field) return [];
        return FieldOffers.Matching(field.Offered, tail).Concat(field.Meant(tail)).Distinct().Select(value => $"{head} {value}");
    }

    private static Field Field(string key) => FieldBook.Find($"{Owner}.{key}")!;
}
