using System.Collections.Immutable;
using PanelTui.Beginning;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Reading.Values;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>
/// The loads of a breaker as people type them into a form, in the words of the format: `1/2 hp` is a motor, `fridge 700 W` an appliance.
/// </summary>
/// <param name="Text">The line for <see cref="LoadPhrase"/>; as typed where it cannot be told.</param>
/// <param name="Refusal">Why it cannot stand.</param>
/// <param name="Instead">The whole line as it may have been meant.</param>
internal sealed record TypedLoads(string Text, string? Refusal = null, string? Instead = null)
{
    private const string HowTo = "write it like motor 1/2 hp, appliance 700 W or lighting 480 W, continuous";

    private static Field Kinds { get; } = FieldBook.Find("circuits[].loads[].kind")!;

    private static Field Ratings { get; } = FieldBook.Find("circuits[].loads[].rating")!;

    public static TypedLoads Of(string line)
    {
        var loads = line.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        for (var at = 0; at < loads.Length; at++)
        {
            var one = OfOne(loads[at]);
            loads[at] = one.Instead ?? one.Text;
            if (one.Refusal is not null) return new TypedLoads(line, one.Refusal, one.Instead is null ? null : string.Join("; ", loads));
        }

        return new TypedLoads(string.Join("; ", loads));
    }

    /// <summary>One load: kind and rating stand before its first comma, the rest is as it is.</summary>
    private static TypedLoads OfOne(string load)
    {
        var comma = load.IndexOf(',', StringComparison.Ordinal);
        var (head, rest) = comma < 0 ? (load, "") : (load[..comma].TrimEnd(), load[comma..]);
        foreach (var flag in LoadPhrase.Flags.Where(flag => head.EndsWith($" {flag}", StringComparison.OrdinalIgnoreCase)))
            (head, rest) = (head[..^(flag.Length + 1)].TrimEnd(), $", {flag}{rest}");
        var read = OfHead(head.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return new TypedLoads(read.Text + rest, read.Refusal, read.Instead is null ? null : read.Instead + rest);
    }

    private static TypedLoads OfHead(string[] words)
    {
        if (words.Length == 0) return new TypedLoads("");
        for (var count = Math.Min(2, words.Length); count > 0; count--)
        {
            if (KindOf(string.Join('-', words[..count])) is { } kind) return Rated(kind, words, words[count..]);
        }

        var rating = RatingOf(words);
        return Guessed(words, string.Join(' ', words[..^rating.Length]), string.Join(' ', rating));
    }

    /// <summary>A load whose first words are no kind: a usual load, a motor by its horsepower, or a word mistyped.</summary>
    private static TypedLoads Guessed(string[] words, string name, string rating)
    {
        var typed = string.Join(' ', words);
        var isMotor = Ratings.Written(rating).EndsWith(" hp", StringComparison.Ordinal);
        if (UsualLoads.Called(name) is { } usual)
        {
            return rating.Length > 0
                ? Rated(usual.Kind, words, rating.Split(' '))
                : new TypedLoads(typed, $"\"{name}\" is often {usual.Phrase} ({UsualLoads.Remark}): Enter takes it", usual.Phrase);
        }

        if (name.Length == 0) return isMotor ? Rated("motor", words, rating.Split(' ')) : Offered(typed, Meant("other", rating));
        var near = isMotor ? "motor" : DidYouMean.Closest(name.Replace(' ', '-'), Kinds.Allowed);
        return near is null ? new TypedLoads(typed, HowTo) : Offered(typed, Meant(near, rating));
    }

    /// <summary>A kind with what follows it: a rating, one without its unit, or words before a rating that the format has no place for.</summary>
    private static TypedLoads Rated(string kind, string[] words, string[] rest)
    {
        var rating = RatingOf(rest);
        return rating.Length == 0 || (rating.Length == rest.Length && IsWhole(string.Join(' ', rating)))
            ? new TypedLoads($"{kind} {string.Join(' ', rest)}".TrimEnd())
            : Offered(string.Join(' ', words), Meant(kind, string.Join(' ', rating)));
    }

    private static TypedLoads Offered(string typed, ImmutableArray<string> meant)
    {
        var others = meant.Length > 1 ? $"; or {string.Join(", ", meant.Skip(1).Take(2))}" : "";
        return new TypedLoads(typed, $"\"{typed}\" could be {meant[0]}: Enter takes it{others}", meant[0]);
    }

    /// <summary>The kind with each unit that the rating may have; a motor has horsepower before all others.</summary>
    private static ImmutableArray<string> Meant(string kind, string rating) => IsWhole(rating) || rating.Length == 0
        ? [$"{kind} {Ratings.Written(rating)}".TrimEnd()]
        : [.. Ratings.Meant(rating).OrderBy(one => kind == "motor" && !one.EndsWith(" hp", StringComparison.Ordinal)).Select(one => $"{kind} {one}")];

    /// <summary>The words at the end that are a rating, with its unit or without.</summary>
    private static string[] RatingOf(string[] words)
    {
        var begin = 0;
        while (begin < words.Length && !IsRating(string.Join(' ', words[begin..]))) begin++;
        return words[begin..];
    }

    private static string? KindOf(string word) => Kinds.WhyNot(Kinds.Written(word)) is null ? Kinds.Written(word) : null;

    private static bool IsRating(string text) => IsWhole(text) || !Ratings.Meant(text).IsEmpty;

    private static bool IsWhole(string text) => Ratings.WhyNot(Ratings.Written(text)) is null;
}
