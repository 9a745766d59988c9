namespace PanelTui.Documents.Files;

/// <summary>
/// Files that the kernel makes up, such as those in /proc: they look regular and empty, and reading one may wait forever.
/// </summary>
internal static class KernelFile
{
    private static readonly string[] FileSystems =
        ["proc", "sysfs", "debugfs", "tracefs", "securityfs", "configfs", "pstorefs", "cgroupfs", "cgroup2fs", "bpf_fs", "efivarfs", "fusectl"];

    public static bool Is(string path)
    {
        if (!OperatingSystem.IsLinux()) return false;
        try
        {
            return FileSystems.Contains(new DriveInfo(path).DriveFormat);
        }
        catch (Exception error) when (FaultReader.IsFileError(error))
        {
            return false; // the read that follows says what is wrong
        }
    }
}
