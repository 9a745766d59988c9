using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>One of a few words, in any case.</summary>
internal sealed class ChoiceForm<T>(params ImmutableArray<(string Word, T Value)> choices)
    : ValueForm<T>($"one of {Listed.Or([.. choices.Select(choice => choice.Word)])}")
    where T : notnull
{
    /// <summary>Whether a near word is offered; the wrong one of two systems would be a bad guess.</summary>
    public bool Guesses { get; init; } = true;

    public override ImmutableArray<string> Allowed { get; } = [.. choices.Select(choice => choice.Word)];

    public override Outcome<T> Read(string text)
    {
        var wanted = Normal(text);
        foreach (var (word, value) in choices)
        {
            if (Normal(word) == wanted) return Outcome.Of(value);
        }

        return Outcome.Refused<T>(
            $"is {Quoted.Of(text)}, which is not {Words}{(Guesses ? DidYouMean.Hint(text, Allowed) : "")}");
    }

    /// <summary>Blanks do not count: `120/240V 1ph 3W` is the system of two legs.</summary>
    private static string Normal(string text) => text.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant();
}
