namespace PanelTui.Terminal;

/// <summary>Whether the limits of the system leave enough for a full screen; asked before the terminal is taken.</summary>
/// <remarks>
/// Without files, threads or memory in reserve the panel is painted and no key works, or the end of the program leaves
/// the terminal as it is. So what is needed is taken once and given back.
/// </remarks>
internal static class Provision
{
    /// <summary>Keyboard, signals, journal, a save with its folder, and git with three pipes.</summary>
    private const int Files = 16;

    /// <summary>Bytes for the text, its versions and the threads that end the program.</summary>
    private const nint Memory = 64 << 20;

    private const int NoAccess = 0;
    private const int PrivateOnLinux = 0x22;
    private const int PrivateOnMac = 0x1002;

    /// <summary>A sentence that says what is missing; null when there is enough.</summary>
    public static string? WhyNot() => !HasFiles() ? "paneltui: the limit of open files (ulimit -n) is too low for the full screen."
        : !HasMemory() ? "paneltui: the limit of memory (ulimit -v) is too low for the full screen."
        : null;

    private static bool HasFiles()
    {
        Span<int> taken = stackalloc int[Files];
        for (var at = 0; at < Files; at++)
            taken[at] = Libc.Duplicate(0);
        foreach (var fd in taken)
        {
            if (fd >= 0)
                _ = Libc.Close(fd);
        }

        return !taken.Contains(-1);
    }

    private static bool HasMemory()
    {
        var reserve = Libc.Map(0, Memory, NoAccess, OperatingSystem.IsMacOS() ? PrivateOnMac : PrivateOnLinux, -1, 0);
        if (reserve == -1)
            return false;
        _ = Libc.Unmap(reserve, Memory);
        return true;
    }
}
