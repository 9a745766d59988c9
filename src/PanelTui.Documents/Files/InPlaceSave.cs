using Microsoft.Win32.SafeHandles;

namespace PanelTui.Documents.Files;

/// <summary>
/// Writes over a file where it is, for files that cannot be replaced. It takes the space before it touches a byte, and
/// keeps a copy of the old version elsewhere until the new one is on the disk.
/// </summary>
internal static class InPlaceSave
{
    public static SavedFile Write(SaveTarget target, byte[] bytes, string why)
    {
        var old = File.ReadAllBytes(target.Path);
        var copy = SafetyCopy.Make(target, old);
        using (var file = File.OpenHandle(target.Path, access: FileAccess.Write, share: FileShare.ReadWrite))
        {
            TakeSpace(file, old.Length, bytes.Length, copy);
            Overwrite(file, target, bytes, copy);
        }

        File.Delete(copy);
        return new(
            DiskState.Of(FileIdentity.Of(target.Path)!, bytes),
            $"{target.Name} was written in place, since {why}; a power cut at that moment could have damaged it.");
    }

    private static void TakeSpace(SafeFileHandle file, int old, int wanted, string copy)
    {
        if (wanted <= old) return;
        try
        {
            RandomAccess.Write(file, new byte[wanted - old], old);
            Durable.Sync(file);
        }
        catch
        {
            RandomAccess.SetLength(file, old);
            File.Delete(copy);
            throw;
        }
    }

    private static void Overwrite(SafeFileHandle file, SaveTarget target, byte[] bytes, string copy)
    {
        try
        {
            RandomAccess.Write(file, bytes, 0);
            RandomAccess.SetLength(file, bytes.Length);
            Durable.Sync(file);
        }
        catch (IOException error)
        {
            throw new SaveRefused(
                FaultReader.FaultOf(error),
                $"{target.Name} may be damaged: writing it in place failed ({error.Message}). Its old version is in {copy}.",
                error);
        }
    }
}
