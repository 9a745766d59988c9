namespace PanelTui.Documents.Text;

/// <summary>One replacement: the characters of the span give way to the new text.</summary>
public readonly record struct TextEdit(TextSpan Span, string NewText)
{
    public static TextEdit Insert(int at, string text) => new(new(at, 0), text);

    public static TextEdit Remove(TextSpan span) => new(span, "");

    /// <summary>How many characters longer the text becomes; negative for shorter.</summary>
    public int Growth => NewText.Length - Span.Length;

    /// <summary>The edit that puts back what this one takes away from the given text.</summary>
    public TextEdit Inverse(string before) =>
        new(new(Span.Start, NewText.Length), before.Substring(Span.Start, Span.Length));

    public string ApplyTo(string text) =>
        string.Concat(text.AsSpan(0, Span.Start), NewText, text.AsSpan(Span.End));
}
