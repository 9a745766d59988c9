using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Beginning;

/// <summary>One question of the few that make a new schedule.</summary>
/// <param name="Path">The key of the format that the answer goes to; its rules hold for the answer.</param>
/// <param name="Text">The question.</param>
internal sealed record Question(string Path, string Text)
{
    private const int MostOffered = 8;

    /// <summary>A choice that leaves the key, and with it its section, out for now.</summary>
    public const string NotYet = "not yet";

    /// <summary>A choice that leaves the key out until somebody has looked.</summary>
    public const string NotKnown = "not known";

    /// <summary>What to choose from, each with what it means; a number or the word answers.</summary>
    public ImmutableArray<(string Word, string Meaning)> Choices { get; init; } = [];

    /// <summary>What Enter alone answers; empty leaves the key out.</summary>
    public string Usual { get; init; } = "";

    /// <summary>What is asked for, as a refusal calls it; the title of the key where that says it.</summary>
    public string? Called { get; init; }

    /// <summary>What to look at for the answer.</summary>
    public string Hint { get; init; } = "";

    /// <summary>Whether it makes sense after the answers before it.</summary>
    public Func<Answers, bool> IsAsked { get; init; } = _ => true;

    /// <summary>Several of the choices may be taken.</summary>
    public bool TakesSeveral { get; init; }

    /// <summary>The answer as it is kept, or why it cannot be one, with what it may have been meant as.</summary>
    public (string Answer, string? Refusal, string? Instead) Read(string typed)
    {
        var text = typed.Trim();
        if (text.Length == 0) return (Usual, null, null);
        if (TakesSeveral) return Several(text);
        if (Chosen(text) is { } choice) return (choice, null, null);
        var field = FieldBook.Find(Path)!;
        var written = field.Written(text);
        if (field.WhyNot(written) is not { } reason) return (written, null, null);
        return field.Meant(text) is [var likeliest, .. var others]
            ? ("", $"\"{text}\" could be {string.Join(" or ", others.Take(MostOffered - 1).Prepend(likeliest))}", likeliest)
            : ("", Choices.IsEmpty ? InWords(field, reason) : $"\"{text}\" is not on the list; write a number of it, or a word", null);
    }

    /// <summary>The sentence of the format, which begins with its key, in the words of the question.</summary>
    private string InWords(Field field, string reason)
    {
        var called = Called ?? field.Title;
        return reason.StartsWith($"{field.Key} ", StringComparison.Ordinal) ? $"{char.ToLowerInvariant(called[0])}{called[1..]}{reason[field.Key.Length..]}" : reason;
    }

    private string? Chosen(string text)
    {
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Choices.Length)
            return Choices[number - 1].Word;
        var begun = Choices.Where(choice => choice.Word.StartsWith(text, StringComparison.OrdinalIgnoreCase)).ToList();
        return begun.Count == 1 ? begun[0].Word : null;
    }

    private (string Answer, string? Refusal, string? Instead) Several(string text)
    {
        var parts = text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var wrong = Array.Find(parts, part => Chosen(part) is null);
        return wrong is null
            ? (string.Join(", ", parts.Select(Chosen).Distinct()), null, null)
            : ("", $"\"{wrong}\" is not on the list; write numbers of it with blanks between, e.g. 1 3 4", null);
    }
}
