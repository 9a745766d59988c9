using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>
/// Keeps every token that the parser consumes: dashes, colons and exact ends are in the tokens, not in the events.
/// </summary>
internal sealed class RecordingScanner(Scanner inner) : IScanner
{
    public List<Token> Tokens { get; } = new(512);

    public Mark CurrentPosition => inner.CurrentPosition;

    public Token? Current => inner.Current;

    public bool MoveNext()
    {
        if (inner.Current is not null) ConsumeCurrent();
        return MoveNextWithoutConsuming();
    }

    public bool MoveNextWithoutConsuming()
    {
        if (!inner.MoveNextWithoutConsuming()) return false;
        Tokens.Add(inner.Current!);
        return true;
    }

    public void ConsumeCurrent() => inner.ConsumeCurrent();
}
