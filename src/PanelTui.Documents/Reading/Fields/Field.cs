using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>
/// One key of the format: what may stand there, what stands for it when it is missing, and what it is for.
/// </summary>
public abstract class Field
{
    private protected Field(string path, string help)
    {
        Path = path;
        Help = help;
        var dot = path.LastIndexOf('.');
        Key = path[(dot + 1)..];
        Owner = dot < 0 ? "" : path[..dot];
    }

    /// <summary>Where the key stands, with `[]` for any entry of a list: `circuits[].loads[].kind`.</summary>
    public string Path { get; }

    /// <summary>The last word of <see cref="Path"/>.</summary>
    public string Key { get; }

    /// <summary>The mapping it stands in, as a path: `circuits[].loads[]`; empty at the top of the file.</summary>
    public string Owner { get; }

    /// <summary>One sentence on what it is for, without a full stop.</summary>
    public string Help { get; }

    public abstract FieldShape Shape { get; }

    /// <summary>What may stand there, in words: `a current in A or kA`.</summary>
    public abstract string Expected { get; }

    /// <summary>The words to choose from; empty where any value of the kind will do.</summary>
    public virtual ImmutableArray<string> Allowed => [];

    /// <summary>A good value as it is written in the file; empty for a mapping.</summary>
    public virtual string Example => "";

    /// <summary>What counts when the key is missing, in words or as a value; null where nothing does.</summary>
    public string? Default { get; init; }

    public bool IsRequired { get; init; }

    /// <summary>Whether the user's own words stand there, which may need quotes in the file.</summary>
    public virtual bool IsFreeText => false;

    /// <summary>What is wrong with a value as it was typed, as a sentence; null where it can stand.</summary>
    /// <remarks>Of the value alone: whether an id is taken or a pole exists shows when the file is read.</remarks>
    public abstract string? WhyNot(string text);

    /// <summary>
    /// A value that can stand, spelt as the format spells it: a choice in its own letters, no blanks around.
    /// </summary>
    public string Tidy(string text) =>
        Allowed.FirstOrDefault(word => Plain(word).Equals(Plain(text), StringComparison.OrdinalIgnoreCase))
        ?? text.Trim();

    /// <summary>Whether two written values mean the same: `20 A` and `0.02 kA`, `yes` and `true`.</summary>
    public virtual bool Same(string one, string other) => one.Trim() == other.Trim();

    public override string ToString() => Path;

    private static string Plain(string text) => text.Replace(" ", "", StringComparison.Ordinal);
}
