using System.Globalization;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The user's own words, on one line.</summary>
internal sealed class FreeTextForm(string words, int most = Limits.TextLength) : ValueForm<string>(words)
{
    public override bool IsFreeText => true;

    public override Outcome<string> Read(string text) => text.Trim() switch
    {
        { Length: var length } when length > most => Outcome.Refused<string>(string.Create(
            CultureInfo.InvariantCulture, $"has {length} characters; the most that a line of a label holds is {most}")),
        var line when line.AsSpan().IndexOfAny('\r', '\n') >= 0 =>
            Outcome.Refused<string>("has a line break in it; write it on one line"),
        var line => Outcome.Of(line),
    };
}
