using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>
/// The ways to write a scalar, best first. The guard around the edit takes the first that reads back right.
/// </summary>
internal static class ScalarCandidates
{
    /// <param name="scalar">What is to be written.</param>
    /// <param name="old">The style of the value it replaces; plain for a new one.</param>
    /// <param name="inFlow">Whether it stands in brackets.</param>
    public static IEnumerable<WrittenScalar> Of(NewScalar scalar, YamlStyle old, bool inFlow)
    {
        var text = scalar.Text;
        var isBare = Quoting.CanBePlain(text, inFlow) && (scalar.Kind == ScalarKind.Plain || Quoting.ReadsAsText(text));
        var mayQuote = scalar.Kind == ScalarKind.Text || ScalarText.Resolve(text) == CoreType.Text;
        var maySingle = mayQuote && Quoting.CanBeSingleQuoted(text);
        var single = new WrittenScalar(Quoting.SingleQuoted(text));
        var twice = new WrittenScalar(Quoting.DoubleQuoted(text));

        if (old == YamlStyle.SingleQuoted && maySingle) yield return single;
        if (old == YamlStyle.DoubleQuoted && mayQuote) yield return twice;
        if (isBare) yield return new(text);
        if (!inFlow && mayQuote && Literal(text) is { } literal) yield return literal;
        if (maySingle && text.AsSpan().ContainsAny('"', '\\')) yield return single;
        if (mayQuote) yield return twice;
        if (maySingle) yield return single;
    }

    // Only texts that the plainest form of | holds exactly; others are quoted.
    private static WrittenScalar? Literal(string text)
    {
        if (!text.Contains('\n', StringComparison.Ordinal) || text.AsSpan().ContainsAny('\r', '\t')) return null;
        var keepsLastBreak = text.EndsWith('\n');
        var lines = (keepsLastBreak ? text[..^1] : text).Split('\n');
        if (lines[0].Length == 0 || lines[^1].Length == 0 || lines[0][0] == ' ') return null;
        return lines.All(line => line.Length == 0 || (line[^1] != ' ' && Quoting.CanBeSingleQuoted(line)))
            ? new(keepsLastBreak ? "|" : "|-", [.. lines])
            : null;
    }
}
