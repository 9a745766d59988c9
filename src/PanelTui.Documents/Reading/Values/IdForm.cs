namespace PanelTui.Documents.Reading.Values;

/// <summary>The stable name of a circuit: letters, digits, `-`, `_` and `.`.</summary>
internal sealed class IdForm() : ValueForm<string>("an id of letters, digits, -, _ and .")
{
    /// <summary>What a scenario writes for every circuit, so no circuit can be called that.</summary>
    public const string All = "all";

    public override bool IsFreeText => true;

    public override Outcome<string> Read(string text)
    {
        if (text.Length > Limits.IdLength)
            return Outcome.Refused<string>($"has {text.Length} characters; the most is {Limits.IdLength}");
        if (text.Equals(All, StringComparison.OrdinalIgnoreCase))
            return Outcome.Refused<string>("is \"all\", which in a scenario means every circuit; choose another id");
        return text.Length > 0 && text.All(IsAllowed)
            ? Outcome.Of(text)
            : Outcome.Refused<string>($"is {Quoted.Of(text)}; an id has letters, digits, -, _ and . only");
    }

    private static bool IsAllowed(char letter) => char.IsLetterOrDigit(letter) || letter is '-' or '_' or '.';
}
