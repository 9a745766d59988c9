using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>How one kind of value is written in a schedule, and what it is called in a sentence.</summary>
/// <param name="words">What is expected, such as `a current with its unit`.</param>
internal abstract class ValueForm<T>(string words)
    where T : notnull
{
    public string Words { get; } = words;

    /// <summary>The words to choose from; empty where any value of the form will do.</summary>
    public virtual ImmutableArray<string> Allowed => [];

    /// <summary>Whether it is the user's own words, which may need quotes in the file.</summary>
    public virtual bool IsFreeText => false;

    /// <summary>Good values to choose from while typing: the words, or the usual sizes.</summary>
    public virtual ImmutableArray<string> Offered => Allowed;

    /// <summary>The units it may be written in, such as `A or kA`; empty where it has none.</summary>
    public virtual string Unit => "";

    public abstract Outcome<T> Read(string text);

    /// <summary>
    /// What a person typed as the format spells it: `20A` as `20 A`, a choice in its own letters; what cannot be
    /// understood stays as it is.
    /// </summary>
    public virtual string Written(string text) =>
        Allowed.FirstOrDefault(word => Plain(word).Equals(Plain(text), StringComparison.OrdinalIgnoreCase)) ?? text.Trim();

    /// <summary>What a text that cannot stand may be meant as, the likeliest first: a word begun, a number without its unit.</summary>
    public virtual ImmutableArray<string> Meant(string text) => text.Trim() is { Length: > 0 } begun
        ? [.. Allowed.Where(word => word.StartsWith(begun, StringComparison.OrdinalIgnoreCase))]
        : [];

    private static string Plain(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
