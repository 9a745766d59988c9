using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// A text that is not the YAML it should be. The message is a sentence without the place, which stands beside it.
/// </summary>
#pragma warning disable CA1032, CA1710 // Without a place it would be no YamlProblem; and it is named for what it tells the user.
public sealed class YamlProblem : Exception
#pragma warning restore CA1032, CA1710
{
    public YamlProblem(string message, LinePosition position, int offset, Exception? cause = null)
        : base(message, cause)
    {
        Position = position;
        Offset = offset;
    }

    public LinePosition Position { get; }

    /// <summary>Where, in characters from the start of the text.</summary>
    public int Offset { get; }

    internal static YamlProblem At(SourceText source, int offset, string message, Exception? cause = null)
    {
        var inside = Math.Clamp(offset, 0, source.Text.Length);
        return new(message, source.PositionOf(inside), inside, cause);
    }
}
