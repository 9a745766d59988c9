namespace PanelTui.Beginning;

/// <summary>Something that people feed from a standby panel, with figures to start from.</summary>
/// <param name="Name">For the directory in the door.</param>
/// <param name="Id">The stable name of its circuit.</param>
/// <param name="Breaker">The usual handle rating.</param>
/// <param name="Poles">1 or 2.</param>
/// <param name="Load">The load as the format writes it, between braces.</param>
/// <param name="Amperes">About what it draws on each of its legs, for spreading the loads over the legs.</param>
internal sealed record UsualLoad(string Name, string Id, string Breaker, int Poles, string Load, decimal Amperes)
{
    public string Kind => Load.Split(", ")[0]["kind: ".Length..];

    /// <summary>The load as a form has it: `appliance 6 A, running 180 W`.</summary>
    public string Phrase => Load.Replace("kind: ", "", StringComparison.Ordinal).Replace(", rating: ", " ", StringComparison.Ordinal).Replace(": ", " ", StringComparison.Ordinal);

    /// <summary>Whether a person may call it so: by its id, or how its name begins or ends.</summary>
    public bool IsCalled(string words) =>
        Same(Id.Replace('-', ' '), words) || Same(Name, words)
        || Name.StartsWith($"{words} ", StringComparison.OrdinalIgnoreCase) || Name.EndsWith($" {words}", StringComparison.OrdinalIgnoreCase);

    private static bool Same(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
