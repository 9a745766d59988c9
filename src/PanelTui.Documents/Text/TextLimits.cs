namespace PanelTui.Documents.Text;

/// <summary>
/// How large a file may be. A schedule of 84 circuits has 10 KB, so these stop only what is no schedule.
/// </summary>
public static class TextLimits
{
    /// <summary>4 MiB: still read, checked and shown in about a second.</summary>
    public const int Bytes = 4 * 1024 * 1024;

    /// <summary>65,536 characters on one line: a longer one is not written by hand and slows every screen.</summary>
    public const int LineLength = 64 * 1024;
}
