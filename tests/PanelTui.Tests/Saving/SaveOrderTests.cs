using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Saving;

/// <summary>The system calls of one save, as strace saw them: the order is what a power cut would meet.</summary>
public sealed class SaveOrderTests : TerminalTests
{
    [Fact]
    public void A_save_waits_for_the_file_then_renames_it_then_waits_for_the_folder()
    {
        var calls = CallsOfOneSave();
        var made = Handle(calls, call => call.Contains(".tmp\"", StringComparison.Ordinal) && call.Contains("O_CREAT", StringComparison.Ordinal));
        var renamed = Place(calls, call => call.StartsWith("rename(", StringComparison.Ordinal));
        var written = calls.FindLastIndex(call => call.StartsWith($"pwrite64({made},", StringComparison.Ordinal));
        var synced = Place(calls, call => call.StartsWith($"fsync({made})", StringComparison.Ordinal));
        var folder = calls[renamed..].First(call => call.Contains($"\"{Folder}\", O_RDONLY)", StringComparison.Ordinal)).Split("= ")[^1];
        var folderSynced = calls.FindIndex(renamed, call => call.StartsWith($"fsync({folder})", StringComparison.Ordinal));
        new[] { written, synced, renamed, folderSynced }.ShouldBeInOrder();
        written.ShouldBeGreaterThan(-1);
    }

    [Fact]
    public void The_new_file_is_made_only_where_there_is_none_and_for_the_user_alone()
    {
        var made = CallsOfOneSave().First(call => call.Contains(".tmp\"", StringComparison.Ordinal));
        made.ShouldContain("O_EXCL");
        made.ShouldContain("O_CREAT");
        made.ShouldContain(", 0600)");
    }

    private List<string> CallsOfOneSave()
    {
        Strace.IsWanted();
        var schedule = Path.Combine(Folder, "shed.yaml");
        var log = Path.Combine(Folder, "log");
        File.WriteAllText(schedule, SaveLoop.Version(0));
        Finished.Of("/usr/bin/strace", "-f", "-qq", "-o", log, "-e", "trace=open,openat,pwrite64,fsync,rename", Tests, SaveLoop.Argument, schedule, "1");
        return [.. File.ReadLines(log).Select(line => line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..].TrimStart())];
    }

    private static string Handle(List<string> calls, Predicate<string> which) => calls[Place(calls, which)].Split("= ")[^1];

    private static int Place(List<string> calls, Predicate<string> which)
    {
        var at = calls.FindIndex(which);
        at.ShouldBeGreaterThan(-1);
        return at;
    }
}
