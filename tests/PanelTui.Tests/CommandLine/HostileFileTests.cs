using PanelTui.CommandLine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.Tests.CommandLine;

/// <summary>Text of a file, and the name of a file, never drives the terminal: in no output of no verb (CWE-150).</summary>
public class HostileFileTests
{
    /// <summary>What each verb prints of a schedule; FILE is the schedule, OTHER another version of it.</summary>
    public static TheoryData<string> Lines =>
    [
        "check FILE", "check FILE --json", "calc FILE", "calc FILE --json", "calc FILE --why chain", "calc FILE --why connected", "calc FILE --why branch:1",
        "balance FILE", "balance FILE --json", "run FILE", "run FILE --json", "run FILE --table", "transfer FILE", "diff OTHER FILE", "diff FILE OTHER",
        "diff OTHER FILE --json", "diff OTHER FILE --markdown", "diff --textconv FILE", "merge OTHER FILE THIRD",
        .. from kind in SheetKind.All from format in SheetFormat.All where !format.IsBinary select $"print {kind.Name} FILE --format {format.Name}",
    ];

    public static TheoryData<string> ReadingVerbs => [.. Verbs.All.Select(verb => verb.Name).Except(["completions", "info", "schema", "git-setup", "rules"])];

    [Fact]
    public void The_schedule_has_every_free_text_hostile_and_can_be_read()
    {
        Shed.Snapshot(HostileText.Schedule).Diagnostics.Where(wrong => wrong.IsError).Select(wrong => wrong.Message).ShouldBeEmpty();
        HostileText.Schedule.Split(HostileText.Escaped).Length.ShouldBeGreaterThan(10);
    }

    [Theory, MemberData(nameof(Lines))]
    public void Text_of_a_file_drives_no_terminal(string line)
    {
        using var folder = new TempFolder();
        var file = folder.File("file.panel.yaml", HostileText.Schedule);
        var other = folder.File("other.panel.yaml", HostileText.Schedule.Replace("20 A", "25 A", StringComparison.Ordinal).Replace(@"\e]0", @"\e]2", StringComparison.Ordinal));
        var third = folder.File("third.panel.yaml", HostileText.Schedule.Replace("20 A", "30 A", StringComparison.Ordinal).Replace(@"\e]0", @"\e]1", StringComparison.Ordinal));
        var ran = Ran.Of([.. line.Split(' ').Select(word => word switch { "FILE" => file, "OTHER" => other, "THIRD" => third, _ => word })]);
        HostileText.ShouldDriveNothing(ran.Out, line);
        HostileText.ShouldDriveNothing(ran.Error, line);
        $"{ran.Out}{ran.Error}".ShouldNotContain("Exception");
        $"{ran.Out}{ran.Error}".ShouldNotBeEmpty();
    }

    [Theory, MemberData(nameof(ReadingVerbs))]
    public void The_name_of_a_file_drives_no_terminal(string verb)
    {
        using var folder = new TempFolder();
        foreach (var file in (string[])[folder.File($"none{HostileText.InAName}.yaml"), folder.File($"torn{HostileText.InAName}.yaml", "schedule: ["),
            folder.File($"good{HostileText.InAName}.yaml", Shed.Text)])
        {
            string[] args = verb switch
            {
                "print" => ["print", "directory", file],
                "diff" => ["diff", file, Shed.Example("packing-shed")],
                "merge" => ["merge", file, file, file],
                _ => [verb, file],
            };
            var ran = Ran.Of(args);
            HostileText.ShouldDriveNothing(ran.Out, verb);
            HostileText.ShouldDriveNothing(ran.Error, verb);
        }
    }

    [Theory]
    [InlineData("\e[2J")]
    [InlineData("--\e[2J")]
    [InlineData("check", "--\e[2J")]
    [InlineData("rules", "\e[2J")]
    [InlineData("calc", "x", "--why", "\e[2J")]
    [InlineData("help", "\e[2J")]
    public void A_word_of_the_command_line_drives_no_terminal(params string[] args)
    {
        var ran = Ran.Of(args);
        HostileText.ShouldDriveNothing(ran.Out + ran.Error, string.Join(' ', args));
    }
}
