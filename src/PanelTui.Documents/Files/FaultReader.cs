using PanelTui.Engine;
namespace PanelTui.Documents.Files;

/// <summary>Turns what .NET and the C library throw into a fault and the words for it.</summary>
internal static class FaultReader
{
    public const int NoSpace = 28;

    // Error numbers of Linux; those of other systems end as Other, with the system's own words.
    private const int NotPermitted = 1;
    private const int AccessDenied = 13;
    private const int NoEntry = 2;
    private const int TooBig = 27;
    private const int ReadOnlyFileSystem = 30;
    private const int NameTooLong = 36;
    private const int Loop = 40;
    private const int Stale = 116;
    private const int Quota = 122;

    /// <summary>
    /// Whether this is an error of the file system, to be told to the user, and not one of the program.
    /// </summary>
    public static bool IsFileError(Exception error) =>
        error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    public static FileFault FaultOf(Exception error) => error switch
    {
        UnauthorizedAccessException => FileFault.NoPermission,
        FileNotFoundException => FileFault.NotFound,
        DirectoryNotFoundException => FileFault.NoSuchFolder,
        ArgumentOutOfRangeException => FileFault.DiskFull, // .NET's word for EFBIG
        PathTooLongException or ArgumentException or NotSupportedException => FileFault.BadName,
        _ => FaultOf(error.HResult),
    };

    /// <summary>What the fault means, to follow the file's name and "cannot be saved: ".</summary>
    public static string Words(FileFault fault, Exception error) => fault switch
    {
        FileFault.DiskFull when IsLimit(error) => "your limit on this disk (quota or size of a file) is reached",
        FileFault.DiskFull => "the disk is full",
        FileFault.NoPermission => "you have no permission for it or for its folder",
        FileFault.ReadOnly => "the disk is mounted read-only",
        FileFault.NoSuchFolder or FileFault.NotFound => "its folder does not exist",
        FileFault.LinkLoop => "its symbolic links lead in a circle",
        FileFault.BadName => "the file system does not take this name",
        FileFault.ChangedUnderneath => "the server says that it is another file now",
        FileFault.NotAFile or FileFault.TooLarge or FileFault.Other => error.Message.TrimEnd('.'),
        _ => throw Unnamed.Of(fault),
    };

    private static bool IsLimit(Exception error) => error is ArgumentOutOfRangeException || error.HResult is Quota or TooBig;

    private static FileFault FaultOf(int number) => number switch
    {
        NoSpace or Quota or TooBig => FileFault.DiskFull,
        ReadOnlyFileSystem => FileFault.ReadOnly,
        NotPermitted or AccessDenied => FileFault.NoPermission,
        NameTooLong => FileFault.BadName,
        NoEntry => FileFault.NoSuchFolder,
        Loop => FileFault.LinkLoop,
        Stale => FileFault.ChangedUnderneath,
        _ => FileFault.Other,
    };
}
