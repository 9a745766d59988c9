using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Text;

/// <summary>
/// The text of a file, joined without loss to its bytes: what is read and not edited is written back the same.
/// </summary>
public sealed class SourceText
{
    private readonly LineMap _lines;

    private SourceText(string text, bool hasBom, string? path)
    {
        Text = text;
        HasBom = hasBom;
        Path = path;
        _lines = new(text);
        CharacterCheck.Check(text, _lines);
    }

    /// <summary>The characters, without the byte order mark.</summary>
    public string Text { get; }

    /// <summary>Whether the file starts with a byte order mark, which is kept.</summary>
    public bool HasBom { get; }

    /// <summary>Where the text came from, for messages only; null when it came from no file.</summary>
    public string? Path { get; }

    /// <summary>The break for new lines: the first one in the text, or LF where there is none.</summary>
    public string NewLine => _lines.BreakOf(1) is { Length: > 0 } first ? first : "\n";

    /// <summary>How many lines there are; a final break opens one more, empty line.</summary>
    public int LineCount => _lines.Count;

    internal LineMap Lines => _lines;

    /// <summary>Reads UTF-8.</summary>
    /// <exception cref="YamlProblem">Not UTF-8, too large, or a character that a schedule may not hold.</exception>
    public static SourceText FromBytes(ReadOnlySpan<byte> bytes, string? path = null)
    {
        if (bytes.Length > TextLimits.Bytes)
            throw new YamlProblem($"the file is larger than {TextLimits.Bytes / 1024 / 1024} MiB", new(1, 1), 0);
        var hasBom = bytes.StartsWith(Utf8Text.Mark);
        return new(Utf8Text.Decode(bytes, hasBom), hasBom, path);
    }

    /// <exception cref="YamlProblem">A character that a schedule may not hold, or a line that is too long.</exception>
    public static SourceText FromString(string text, bool hasBom = false) => new(text, hasBom, path: null);

    /// <summary>The same file with another text.</summary>
    /// <exception cref="YamlProblem">As <see cref="FromString"/>.</exception>
    public SourceText WithText(string text) => new(text, HasBom, Path);

    public byte[] ToBytes() => Utf8Text.Encode(Text, HasBom);

    /// <summary>Line and column, from 1, of an offset between 0 and the text's length.</summary>
    public LinePosition PositionOf(int offset) => _lines.PositionOf(Math.Clamp(offset, 0, Text.Length));

    /// <summary>The line with this number, from 1, without its break.</summary>
    public TextSpan LineSpan(int line) => _lines.SpanOf(line);

    /// <summary>The characters of a span.</summary>
    public string Slice(TextSpan span) => Text.Substring(span.Start, span.Length);

    public override string ToString() => Text;
}
