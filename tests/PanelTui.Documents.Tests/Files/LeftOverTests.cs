using System.Runtime.Versioning;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

/// <summary>New versions that a killed save left beside the schedule.</summary>
[UnsupportedOSPlatform("windows")]
public class LeftOverTests : TestFolder
{
    // Larger than any that Linux gives, so that it belongs to nobody.
    private const int Nobody = 2_000_000_000;

    [Fact]
    public void What_a_killed_save_left_beside_the_schedule_goes_at_the_next_start()
    {
        LeftBy(Nobody);
        Sweep();
        Names().ShouldBe(["a.yaml"]);
    }

    [Fact]
    public void What_a_running_save_is_writing_stays()
    {
        LeftBy(Environment.ProcessId);
        Sweep();
        Names().Length.ShouldBe(2);
    }

    [Fact]
    public void What_another_machine_may_be_writing_just_now_stays()
    {
        File.SetLastWriteTimeUtc(LeftBy(Nobody), DateTime.UtcNow);
        Sweep();
        Names().Length.ShouldBe(2);
    }

    [Theory]
    [InlineData(".a.yaml.notes-mine.tmp")]
    [InlineData(".b.yaml.2000000000-x.tmp")]
    [InlineData("a.yaml.2000000000-x.tmp")]
    public void Files_of_others_stay(string name)
    {
        File.SetLastWriteTimeUtc(Write(name, "mine"), DateTime.UnixEpoch);
        Sweep();
        File.ReadAllText(PathOf(name)).ShouldBe("mine");
    }

    [Fact]
    public void A_folder_that_is_gone_is_no_fault() =>
        Should.NotThrow(() => ScheduleFile.Sweep(PathOf("none/a.yaml"), TimeProvider.System));

    private string LeftBy(int process)
    {
        var path = Write($".a.yaml.{process}-{Guid.NewGuid():N}.tmp", "half of it");
        File.SetLastWriteTimeUtc(path, DateTime.UnixEpoch);
        return path;
    }

    private void Sweep() => ScheduleFile.Sweep(Write("a.yaml", "a: 1\n"), TimeProvider.System);
}
