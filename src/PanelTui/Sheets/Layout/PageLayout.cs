using System.Collections.Immutable;
using System.Diagnostics;

namespace PanelTui.Sheets.Layout;

/// <summary>Sets a sheet on paper, block by block.</summary>
internal sealed class PageLayout
{
    private const double Leading = 1.3;
    private readonly PageFlow _flow;
    private readonly double _size;

    private PageLayout(Sheet sheet, Paper paper, double size)
    {
        _size = size;
        _flow = new PageFlow(paper, PageFoot.Height(paper));
        Lines(sheet.Title, size + 4, bold: true);
        _flow.Skip(size * 0.4);
        foreach (var block in sheet.Blocks) Set(block);
    }

    /// <summary>Pages of marks in the first letter size that needs one page, else in the last.</summary>
    public static ImmutableArray<Drawing> Of(Sheet sheet, Paper paper)
    {
        ImmutableArray<ImmutableArray<Mark>> pages = [];
        foreach (var size in sheet.Sizes)
        {
            pages = new PageLayout(sheet, paper, size)._flow.Pages;
            if (pages.Length == 1) break;
        }

        return [.. pages.Select((page, at) => new Drawing(
            sheet.Title, paper.Width, paper.Height, [.. page, .. PageFoot.Marks(paper, at + 1, pages.Length)]))];
    }

    private void Set(Block block)
    {
        switch (block)
        {
            case Block.Heading heading:
                _flow.Need(_size * 7);
                _flow.Skip(_size * 0.8);
                Lines(heading.Text, _size + 1.5, bold: true);
                break;
            case Block.Paragraph paragraph:
                Lines(paragraph.Text, _size, bold: false);
                _flow.Skip(_size * 0.4);
                break;
            case Block.Facts facts:
                Facts(facts);
                break;
            case Block.Grid grid:
                new TableLayout(_flow, grid.Table, _size).Set();
                _flow.Skip(_size * 0.8);
                break;
            case Block.Picture picture:
                PictureLayout.Set(_flow, picture.Drawing);
                _flow.Skip(_size * 0.6);
                break;
            case Block.Signatures signatures:
                Signatures(signatures);
                break;
            default:
                throw new UnreachableException($"A {block.GetType().Name} is not laid out.");
        }
    }

    private void Lines(string text, double size, bool bold, double indent = 0)
    {
        foreach (var line in Typeface.Wrap(text, _flow.Width - indent, size, bold))
        {
            _flow.Need(size * Leading);
            Letters(_flow.Left + indent, line, size, bold);
            _flow.Skip(size * Leading);
        }
    }

    private void Facts(Block.Facts facts)
    {
        var indent = facts.Items.Max(fact => Typeface.Width(fact.Name, _size, bold: true)) + _size;
        foreach (var (name, value) in facts.Items)
        {
            _flow.Need(_size * Leading);
            Letters(_flow.Left, name, _size, bold: true);
            Lines(value, _size, bold: false, indent);
        }

        _flow.Skip(_size * 0.6);
    }

    private void Signatures(Block.Signatures signatures)
    {
        var height = _size * 4;
        _flow.Need(height);
        var width = _flow.Width / signatures.Lines.Length;
        for (var at = 0; at < signatures.Lines.Length; at++)
        {
            var (left, y) = (_flow.Left + (at * width), _flow.Top + (height * 0.7));
            _flow.Add(new Mark.Stroke([new(left, y), new(left + width - (2 * _size), y)], 0.7));
            _flow.Add(new Mark.Letters(new(left, y + (_size * 1.1)), signatures.Lines[at], _size - 1));
        }

        _flow.Skip(height);
    }

    private void Letters(double x, string text, double size, bool bold) =>
        _flow.Add(new Mark.Letters(new Point(x, _flow.Top + size), text, size, bold));
}
