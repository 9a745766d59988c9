namespace PanelTui.Presentation;

/// <summary>One figure beside the panel: what it is called, what it is, and how it stands.</summary>
internal readonly record struct FigureRow(string Label, string Value, Tone Tone = Tone.Plain)
{
    public static readonly FigureRow Gap = new("", "");

    /// <summary>The name under which it can be asked how it came about.</summary>
    public string? Figure { get; init; }

    /// <summary>The label where the row is too narrow for the whole one.</summary>
    public string? Short { get; init; }

    /// <summary>The label to the left, the value to the right edge; a row too long for both drops blanks, then cuts the label.</summary>
    public TextRun In(int columns)
    {
        var room = Math.Max(1, columns - DisplayText.Width(Value) - 2);
        var wanted = Short is { } shorter && DisplayText.Width(Label) > room ? shorter : Label;
        var label = Value.Length == 0 ? DisplayText.Fit(Label, columns - 1) : DisplayText.Fit(wanted, room);
        return new TextRun(DisplayText.Fit(Value.Length == 0 ? $" {label}" : $" {label} {Value}", columns), Tone);
    }
}
