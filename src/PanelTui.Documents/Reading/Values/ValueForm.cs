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

    public abstract Outcome<T> Read(string text);
}
