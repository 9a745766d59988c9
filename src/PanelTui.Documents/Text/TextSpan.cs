namespace PanelTui.Documents.Text;

/// <summary>
/// A stretch of a text: where it starts and how long it is, both in UTF-16 units from the text's start.
/// </summary>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>The place just after the last character.</summary>
    public int End => Start + Length;

    public bool IsEmpty => Length == 0;

    public static TextSpan Between(int start, int end) => new(start, end - start);

    public bool Contains(TextSpan other) => other.Start >= Start && other.End <= End;

    public override string ToString() => $"[{Start}..{End})";
}
