using System.Collections.Immutable;

namespace PanelTui.Documents.Writing;

/// <summary>
/// A new value as characters: what follows its key or dash on the same line, and whole lines below, indented.
/// </summary>
internal readonly record struct Rendered(string Inline, ImmutableArray<string> Lines)
{
    public Rendered(string inline)
        : this(inline, [])
    {
    }

    /// <summary>
    /// The value after what introduces it (<c>key:</c> or <c>-</c>), with as many blanks between as given.
    /// </summary>
    public Rendered After(string introduction, int blanks = 1) => Inline.Length == 0
        ? this with { Inline = introduction }
        : this with { Inline = introduction + new string(' ', blanks) + Inline };

    /// <summary>All lines, the first indented to the column, joined by the break.</summary>
    public string Joined(string lineBreak) => string.Join(lineBreak, Lines.Prepend(Inline));
}
