using System.Collections.Immutable;

namespace PanelTui.Sheets;

/// <summary>One piece of a sheet: what it says, without how it looks. Texts stand as the file has them; each format makes them harmless.</summary>
internal abstract record Block
{
    private Block()
    {
    }

    public sealed record Heading(string Text) : Block;

    public sealed record Paragraph(string Text) : Block;

    /// <summary>Names and what they stand for, a pair a line.</summary>
    public sealed record Facts(ImmutableArray<(string Name, string Value)> Items) : Block;

    public sealed record Grid(Table Table) : Block;

    public sealed record Picture(Drawing Drawing) : Block
    {
        /// <summary>The same in letters, line by line, for formats without pictures; empty where letters cannot tell it.</summary>
        public ImmutableArray<string> InLetters { get; init; } = [];
    }

    /// <summary>Lines to sign on, each with what stands under it.</summary>
    public sealed record Signatures(ImmutableArray<string> Lines) : Block;
}
