using System.Collections.Immutable;

namespace PanelTui.Documents.Writing;

/// <summary>
/// A scalar as characters: what stands on the key's line, and the lines of text below it, if any, unindented.
/// </summary>
internal readonly record struct WrittenScalar(string Head, ImmutableArray<string> Body)
{
    public WrittenScalar(string head)
        : this(head, [])
    {
    }

    public bool IsOneLine => Body.IsEmpty;
}
