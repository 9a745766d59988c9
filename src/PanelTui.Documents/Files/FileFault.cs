namespace PanelTui.Documents.Files;

/// <summary>Why a file could not be read or written.</summary>
public enum FileFault
{
    /// <summary>There is no such file.</summary>
    NotFound,

    /// <summary>The folder is missing.</summary>
    NoSuchFolder,

    /// <summary>A folder, a pipe or a device, not a regular file.</summary>
    NotAFile,

    /// <summary>Larger than a schedule may be.</summary>
    TooLarge,

    /// <summary>The file is write-protected.</summary>
    ReadOnly,

    /// <summary>The file or its folder is not open to this user.</summary>
    NoPermission,

    /// <summary>The file on disk is not the one that was read, or it is gone.</summary>
    ChangedUnderneath,

    /// <summary>No space, no quota or no room for another file.</summary>
    DiskFull,

    /// <summary>Symbolic links that lead in a circle.</summary>
    LinkLoop,

    /// <summary>A name that the file system does not take.</summary>
    BadName,

    /// <summary>Anything else, such as a failing disk.</summary>
    Other,
}
