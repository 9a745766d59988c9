using PanelTui.Screens;

namespace PanelTui.Tests.CommandLine;

public class ExamplesTests
{
    public static TheoryData<string> Examples => [.. Directory
        .GetFiles(Path.Combine(SourceTree.Root, "examples"), "*.panel.yaml")
        .Select(path => Path.GetFileName(path)[..^".panel.yaml".Length])];

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_is_checked_without_an_error(string name) => Ran.Of("check", Shed.Example(name)).Code.ShouldBe(0);

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_is_calculated(string name)
    {
        var ran = Ran.Of("calc", Shed.Example(name));
        ran.Code.ShouldBe(0);
        ran.Out.ShouldContain("least ampacity");
    }

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_opens_at_80_by_24_and_nothing_is_written(string name)
    {
        var before = File.ReadAllBytes(Shed.Example(name));
        var session = Session.Open(Shed.Example(name)).Session!;
        using var program = new Driven(_ => new EditorScreen(session));
        program.Screen.ShouldContain("Least ampacity");
        program.Screen.ShouldContain("Findings");
        File.ReadAllBytes(Shed.Example(name)).ShouldBe(before);
    }
}
