using PanelTui.Documents.Text;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary><c>{a: &amp;x 1, b: 2}</c> is valid YAML that the library cannot read; the user must not look for a mistake.</summary>
internal static class AnchorInBraces
{
    public static YamlProblem? Find(SourceText source, List<Token> tokens, Exception error)
    {
        if (!error.Message.Contains("did not find expected ',' or '}'", StringComparison.Ordinal)) return null;
        var at = tokens.FindLastIndex(token => token is Anchor);
        if (at < 0 || at + 2 >= tokens.Count || tokens[at + 1] is not Scalar || tokens[at + 2] is not FlowEntry) return null;
        var name = ((Anchor)tokens[at]).Value.Value;
        return YamlProblem.At(
            source,
            (int)tokens[at].Start.Index,
            $"a value marked &{name} inside braces is YAML, but cannot be read here; write this mapping without braces, each key on a line of its own",
            error);
    }
}
