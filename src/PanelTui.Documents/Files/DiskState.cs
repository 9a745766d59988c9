namespace PanelTui.Documents.Files;

/// <summary>
/// What a file on disk was when it was last looked at: enough to see later whether it is still the same.
/// </summary>
/// <param name="Device">The file system's number; 0 where there is none.</param>
/// <param name="Inode">The file's number on it; 0 where there is none.</param>
/// <param name="Size">Bytes.</param>
/// <param name="Modified">When it was last written. Clocks lie, so nothing is decided by this alone.</param>
/// <param name="Sha256">The content's SHA-256 in hexadecimal; empty for a file that does not exist.</param>
public sealed record DiskState(ulong Device, ulong Inode, long Size, DateTimeOffset Modified, string Sha256)
{
    /// <summary>There is no file.</summary>
    public static DiskState Missing { get; } = new(0, 0, 0, default, "");

    public bool Exists => Sha256.Length > 0;

    /// <summary>Whether both hold the same bytes, be it in another file or written at another time.</summary>
    public bool SameContent(DiskState other) => Sha256 == other.Sha256;

    internal static DiskState Of(FileIdentity identity, ReadOnlySpan<byte> content) =>
        new(identity.Device, identity.Inode, content.Length, identity.Modified, Files.Sha256.Hex(content));
}
