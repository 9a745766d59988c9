using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>Stretches of whole lines that end in LF, read as YAML on their own.</summary>
internal static class Lines
{
    public static IEnumerable<string> Of(string text)
    {
        for (var start = 0; start < text.Length;)
        {
            var end = text.IndexOf('\n', start);
            var next = end < 0 ? text.Length : end + 1;
            yield return text[start..next];
            start = next;
        }
    }

    public static bool IsBlank(string line) => line.AsSpan().IsWhiteSpace();

    public static bool IsComment(string line) => line.AsSpan().TrimStart() is ['#', ..];

    public static int Indent(string line) => line.Length - line.TrimStart(' ').Length;

    /// <summary>The indentation of the first line that is neither blank nor a comment; null where there is none.</summary>
    public static int? ContentColumn(string text) =>
        Of(text).Where(line => !IsBlank(line) && !IsComment(line)).Select(line => (int?)Indent(line)).FirstOrDefault();

    /// <summary>The lines further to the left; a line that stands further left already goes to the edge.</summary>
    public static string Outdent(string text, int columns) =>
        string.Concat(Of(text).Select(line => line[Math.Min(columns, Indent(line))..]));

    public static string IndentBy(string text, int columns)
    {
        var blanks = new string(' ', columns);
        return string.Concat(Of(text).Select(line => IsBlank(line) && line.Length == 1 ? line : blanks + line));
    }

    /// <summary>The tree of these lines alone; null where they are no YAML on their own, such as for an alias.</summary>
    public static YamlTree? Tree(string text)
    {
        try
        {
            return YamlTree.Parse(SourceText.FromString(text));
        }
        catch (YamlProblem)
        {
            return null;
        }
    }
}
