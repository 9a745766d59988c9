using System.Diagnostics;
using System.Runtime.Versioning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Tests.Files;

namespace PanelTui.Documents.Tests.Recovery;

[UnsupportedOSPlatform("windows")]
public class EditLockTests : TestFolder
{
    [Fact]
    public void The_first_editor_is_told_of_nobody_and_leaves_nothing_behind()
    {
        using (var mine = EditLock.Take(State, Schedule)) mine.Other.ShouldBeNull();
        Directory.GetFileSystemEntries(PathOf("state/recovery")).ShouldBeEmpty();
    }

    [Fact]
    public void The_second_editor_is_told_of_the_first()
    {
        using var sleeper = Process.Start("sleep", "60");
        Lock(Owner.Here with { Process = sleeper.Id, Started = StartOf(sleeper) });
        using (var mine = EditLock.Take(State, Schedule)) mine.Other!.Process.ShouldBe(sleeper.Id);
        File.Exists(TheLock).ShouldBeTrue("the first editor's lock is not the second's to remove");
        sleeper.Kill();
        sleeper.WaitForExit();
        using var then = EditLock.Take(State, Schedule);
        then.Other.ShouldBeNull("the first editor is dead");
    }

    [Fact]
    public void A_lock_that_another_editor_has_taken_over_meanwhile_is_left_to_it()
    {
        using (var mine = EditLock.Take(State, Schedule))
        {
            mine.Other.ShouldBeNull();
            Lock(Owner.Here with { Host = "elsewhere" });
        }

        File.ReadAllText(TheLock).ShouldContain("elsewhere");
    }

    [Fact]
    public void A_lock_of_before_the_last_start_of_the_system_is_taken_over() => LockedBy(Owner.Here with { Boot = "another" }).ShouldBeNull();

    [Fact]
    public void A_process_number_that_is_in_use_again_is_not_the_first_editor() => LockedBy(Owner.Here with { Started = 1 }).ShouldBeNull();

    [Fact]
    public void Of_another_machine_nobody_can_know_and_it_is_told() => LockedBy(Owner.Here with { Host = "elsewhere" })!.Host.ShouldBe("elsewhere");

    [Theory]
    [InlineData("")]
    [InlineData("{\"owner\":")]
    [InlineData("[]")]
    public void A_lock_that_says_nothing_is_taken_over(string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(TheLock)!);
        File.WriteAllText(TheLock, text);
        using var mine = EditLock.Take(State, Schedule);
        mine.Other.ShouldBeNull();
    }

    [Fact]
    public void A_link_to_the_schedule_is_the_schedule()
    {
        File.CreateSymbolicLink(PathOf("link.yaml"), Schedule);
        State.Of(PathOf("link.yaml")).ShouldBe(State.Of(Schedule));
    }

    [Fact]
    public void A_folder_reached_by_another_way_is_the_same_folder()
    {
        Directory.CreateDirectory(PathOf("real/deep"));
        Directory.CreateSymbolicLink(PathOf("link"), PathOf("real"));
        State.Of(PathOf("link/deep/a.yaml")).ShouldBe(State.Of(PathOf("real/deep/a.yaml")));
    }

    [Fact]
    public void A_folder_that_links_to_itself_breaks_nothing()
    {
        File.CreateSymbolicLink(PathOf("x"), PathOf("y"));
        File.CreateSymbolicLink(PathOf("y"), PathOf("x"));
        Should.Throw<FileProblem>(() => EditLock.Take(State, PathOf("x/a.yaml")));
    }

    [Fact]
    public void Without_a_folder_to_write_there_is_a_sentence() =>
        Should.Throw<FileProblem>(() => EditLock.Take(new StateFolder("/proc/none"), Schedule)).Message.ShouldEndWith("Save often.");

    private StateFolder State => new(PathOf("state"));

    private string Schedule => PathOf("a.yaml");

    private string TheLock => Path.Combine(State.Of(Schedule), "lock");

    private Owner? LockedBy(Owner owner)
    {
        Lock(owner);
        using var mine = EditLock.Take(State, Schedule);
        return mine.Other;
    }

    private void Lock(Owner owner)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(TheLock)!);
        File.WriteAllText(TheLock, $$$"""
            {"owner":{"process":{{{owner.Process}}},"started":{{{owner.Started}}},"boot":"{{{owner.Boot}}}","host":"{{{owner.Host}}}","user":"someone"}}
            """);
    }

    private static long StartOf(Process process)
    {
        var line = File.ReadAllText($"/proc/{process.Id}/stat");
        return long.Parse(line[(line.LastIndexOf(')') + 2)..].Split(' ')[19], System.Globalization.CultureInfo.InvariantCulture);
    }
}
