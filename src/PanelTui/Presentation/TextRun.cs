namespace PanelTui.Presentation;

/// <summary>How a piece of text stands out. Every tone also differs by letters or marks, never by colour alone.</summary>
internal enum Tone
{
    Plain,
    Strong,
    Faint,

    /// <summary>Where the cursor is: reversed.</summary>
    Cursor,

    /// <summary>Where a held breaker would land: underlined.</summary>
    Landing,
    Warning,
    Error,
    LegA,
    LegB,
    LegC,
}

/// <summary>A piece of a row in one tone; a row of the screen is a list of them.</summary>
internal readonly record struct TextRun(string Text, Tone Tone = Tone.Plain);
