using System.Text;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Merging;

/// <summary>The versions that conflict markers in a file keep apart, as git and the merge by meaning write them.</summary>
/// <param name="Ancestor">Nothing where a conflict does not show what was there before.</param>
public sealed record MarkedVersions(SourceText Ours, SourceText? Ancestor, SourceText Theirs)
{
    private const int LeastSize = 7;

    private enum Part
    {
        Both,
        Ours,
        Ancestor,
        Theirs,
    }

    /// <summary>Nothing where there are no markers, or some of them are missing.</summary>
    public static MarkedVersions? Of(SourceText marked)
    {
        var (ours, ancestor, theirs) = (new StringBuilder(), new StringBuilder(), new StringBuilder());
        var (part, size, conflicts, shown) = (Part.Both, 0, 0, 0);
        foreach (var line in Lines(marked.Text))
        {
            switch (Marker(line, size))
            {
                case ('<', var width) when part == Part.Both:
                    (part, size, conflicts) = (Part.Ours, width, conflicts + 1);
                    continue;
                case ('|', _) when part == Part.Ours:
                    (part, shown) = (Part.Ancestor, shown + 1);
                    continue;
                case ('=', _) when part is Part.Ours or Part.Ancestor:
                    part = Part.Theirs;
                    continue;
                case ('>', _) when part == Part.Theirs:
                    part = Part.Both;
                    continue;
                case ('<' or '>', _):
                    return null;
                default: // a line of the file
                    break;
            }

            if (part is Part.Both or Part.Ours) ours.Append(line);
            if (part is Part.Both or Part.Ancestor) ancestor.Append(line);
            if (part is Part.Both or Part.Theirs) theirs.Append(line);
        }

        return conflicts == 0 || part != Part.Both
            ? null
            : new(marked.WithText($"{ours}"), shown == conflicts ? marked.WithText($"{ancestor}") : null, marked.WithText($"{theirs}"));
    }

    /// <summary>The sign and width of a marker line; once one was seen, all have its width.</summary>
    private static (char Sign, int Width)? Marker(string line, int size)
    {
        if (line.Length < LeastSize || line[0] is not ('<' or '|' or '=' or '>')) return null;
        var width = line.Length - line.AsSpan().TrimStart(line[0]).Length;
        var ends = width == line.Length || line[width] is ' ' or '\r' or '\n';
        return ends && width >= LeastSize && (size == 0 || width == size) ? (line[0], width) : null;
    }

    private static IEnumerable<string> Lines(string text)
    {
        for (var start = 0; start < text.Length;)
        {
            var end = text.IndexOf('\n', start) is >= 0 and var at ? at + 1 : text.Length;
            yield return text[start..end];
            start = end;
        }
    }
}
