namespace PanelTui.Documents.Reading.Values;

/// <summary>A character that looks like another one which the format uses.</summary>
/// <param name="Found">The character in the text.</param>
/// <param name="Plain">What it looks like; empty for one that cannot be seen.</param>
/// <param name="Name">What it is, such as `the Cyrillic letter A`.</param>
internal sealed record LookAlike(char Found, string Plain, string Name)
{
    /// <summary>`"А" is the Cyrillic letter A (U+0410), not the Latin A`.</summary>
    public string Sentence => Plain switch
    {
        "" => $"there is {Name} ({Code}) in it, which cannot be seen",
        " " => $"there is {Name} ({Code}) in it where a plain space belongs",
        _ => $"\"{Found}\" is {Name} ({Code}), not the {PlainName}",
    };

    private string Code => $"U+{(int)Found:X4}";

    private string PlainName => char.IsAsciiLetter(Plain[0]) ? $"Latin {Plain}" : char.IsAsciiDigit(Plain[0]) ? $"plain {Plain}" : $"plain sign {Plain}";
}
