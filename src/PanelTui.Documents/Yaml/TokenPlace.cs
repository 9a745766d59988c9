using PanelTui.Documents.Text;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Where a token stands. The library gives brackets and <c>...</c> no width, and lets some ends overshoot the text.
/// </summary>
internal static class TokenPlace
{
    public static TextSpan Of(Token token, int textLength)
    {
        var start = (int)Math.Min(token.Start.Index, textLength);
        var end = token switch
        {
            StreamStart or StreamEnd or BlockEnd or BlockMappingStart or BlockSequenceStart => start,
            FlowMappingStart or FlowMappingEnd or FlowSequenceStart or FlowSequenceEnd => start + 1,
            DocumentEnd => start + "...".Length,
            _ => (int)token.End.Index,
        };
        return TextSpan.Between(start, Math.Clamp(end, start, textLength));
    }
}
