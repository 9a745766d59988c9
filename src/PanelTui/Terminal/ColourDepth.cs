namespace PanelTui.Terminal;

/// <summary>How many colours the terminal is sent.</summary>
internal enum ColourDepth
{
    /// <summary>None: bold, underline and reverse carry the screen.</summary>
    None,

    /// <summary>The sixteen of the terminal's own palette.</summary>
    Sixteen,

    /// <summary>The cube of 256.</summary>
    Cube,

    /// <summary>Red, green and blue of eight bits each.</summary>
    Full,
}
