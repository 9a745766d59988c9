using PanelTui.Engine;

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

/// <summary>The words for a number of colours.</summary>
internal static class ColourDepthWords
{
    extension(ColourDepth depth)
    {
        /// <summary>As `info` writes it: `256`.</summary>
        public string Word => depth switch
        {
            ColourDepth.None => "none",
            ColourDepth.Sixteen => "16",
            ColourDepth.Cube => "256",
            ColourDepth.Full => "16 million",
            _ => throw Unnamed.Of(depth),
        };
    }
}
