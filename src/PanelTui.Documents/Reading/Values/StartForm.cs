using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// How a load starts: `6x` its full-load current, `code G` of Table 430.7(B), or `47 A` of locked-rotor current.
/// </summary>
internal sealed class StartForm() : ValueForm<Start>("a start such as 6x, code G or 47 A")
{
    /// <summary>The letters of Table 430.7(B), from memory: no I, O or Q, which look like figures.</summary>
    private const string CodeLetters = "ABCDEFGHJKLMNPRSTUV";

    private static readonly Measure Factor =
        new("a start", [MeasuringUnit.Base("x")], Limits.StartFactor);

    private static readonly Measure LockedRotor = Measures.LockedRotor with { Name = "a start" };

    private static readonly ImmutableArray<Measure> Starts = [Factor, LockedRotor];

    public override ImmutableArray<string> Offered { get; } = ["6x", .. CodeLetters.Select(letter => $"code {letter}")];

    public override string Written(string text)
    {
        var letter = text.Trim().ToUpperInvariant().Replace("CODE", "", StringComparison.Ordinal).Trim();
        return letter.Length == 1 && CodeLetters.Contains(letter, StringComparison.Ordinal)
            ? $"code {letter}"
            : TypedQuantity.Written(text, Starts);
    }

    public override ImmutableArray<string> Meant(string text) => TypedQuantity.Meant(text, Starts);

    public override Outcome<Start> Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        if (words is [var first, var letter] && first.Equals("code", StringComparison.OrdinalIgnoreCase))
            return Code(text, letter);
        return QuantityReader.Read(text, Starts, "6x, code G or 47 A").Then(InRush);
    }

    private static Outcome<Start> Code(string text, string letter)
    {
        return letter.Length == 1 && CodeLetters.Contains(char.ToUpperInvariant(letter[0]), StringComparison.Ordinal)
            ? Outcome.Of<Start>(new Start.CodeLetter(char.ToUpperInvariant(letter[0])))
            : Outcome.Refused<Start>(
                $"is {Quoted.Of(text)}; a code letter is one of A to V without I, O and Q, e.g. code G");
    }

    private static Start InRush(Quantity quantity) => quantity.Measure == Factor
        ? new Start.Times(quantity.Value)
        : new Start.Current(new Amperes(quantity.Value));
}
