using System.Globalization;
using PanelTui.Documents.Recovery;

namespace PanelTui.Documents.Files;

/// <summary>
/// What the new version of a file is called while it is written beside the old one: hidden, and named so that one left over by a
/// crash tells whose it was.
/// </summary>
internal static class TemporaryName
{
    private const int LongestStart = 40;

    /// <summary>A process number of another machine says nothing here, and no save takes so long.</summary>
    private static readonly TimeSpan SurelyLeft = TimeSpan.FromMinutes(1);

    public static string New(SaveTarget target) =>
        Path.Combine(target.Folder, $"{Start(target)}{Environment.ProcessId}-{UniqueName.New()}.tmp");

    /// <summary>Removes what runs that have ended left beside a file; what cannot be removed stays.</summary>
    public static void Sweep(SaveTarget target, TimeProvider clock)
    {
        foreach (var file in new DirectoryInfo(target.Folder).GetFiles($"{Start(target)}*-*.tmp"))
        {
            var process = file.Name[Start(target).Length..].Split('-')[0];
            if (int.TryParse(process, CultureInfo.InvariantCulture, out var number)
                && !Owner.Runs(number)
                && file.LastWriteTimeUtc + SurelyLeft < clock.GetUtcNow().UtcDateTime)
                file.Delete();
        }
    }

    private static string Start(SaveTarget target)
    {
        var name = Path.GetFileName(target.Path);
        return $".{(name.Length > LongestStart ? name[..LongestStart] : name)}.";
    }
}
