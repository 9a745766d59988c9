using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Yaml;

/// <summary>Steps over the recorded tokens in the file's order, their marks clamped to the text.</summary>
internal sealed class TokenCursor(IReadOnlyList<Token> tokens, int textLength)
{
    private int _next;

    /// <summary>The end of the last token taken that has characters: the place of an empty value.</summary>
    public int LastEnd { get; private set; }

    public Token? Next => _next < tokens.Count ? tokens[_next] : null;

    /// <summary>The next token that is not the end of a block, which has no characters.</summary>
    public Token? NextInside
    {
        get
        {
            while (Next is BlockEnd) _next++;
            return Next;
        }
    }

    public int StartOf(Token token) => TokenPlace.Of(token, textLength).Start;

    public int EndOf(Token token) => TokenPlace.Of(token, textLength).End;

    public Token Take()
    {
        var token = tokens[_next++];
        if (TokenPlace.Of(token, textLength) is { IsEmpty: false } place) LastEnd = place.End;
        return token;
    }

    /// <summary>Takes the next token when it is of this type; where it starts, or null.</summary>
    public int? TakeIf<T>()
        where T : Token =>
        NextInside is T ? StartOf(Take()) : null;

    public void SkipWhile(Func<Token, bool> isSkipped)
    {
        while (Next is { } token && isSkipped(token)) Take();
    }
}
