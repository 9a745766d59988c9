using PanelTui.CommandLine;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Growth;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;
using PanelTui.Screens;
using Work = PanelTui.Documents.Tests.Growth.Growth;

namespace PanelTui.Tests.Growth;

/// <summary>No legal file is slow: every command takes twice the work for twice the file, and so does what the editor paints.</summary>
public sealed class LargeFileTests : IDisposable
{
    private static readonly string[][] Commands =
    [
        ["check"], ["check", "--json"], ["calc"], ["calc", "--json"], ["run"], ["transfer"], ["print", "directory"], ["diff", "--textconv"],
    ];

    private readonly TempFolder _folder = new();
    private int _files;

    public static TheoryData<LargeFile> Files => [.. LargeFile.All];

    /// <summary>Those that have much of what the figures come from; of the others only the reading grows, and what prints their text.</summary>
    private static bool IsOfThePanel(LargeFile file) =>
        file.Name.Contains("circuit", StringComparison.Ordinal) || file.Name.Contains("name", StringComparison.Ordinal)
        || file.Name is "scenarios" or "accepted findings";

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_command_takes_twice_the_work_for_twice_the_file(LargeFile file)
    {
        var steep = Work.Share(file, Commands).Where(command => IsOfThePanel(file) || command is ["check"] or ["calc"] or ["diff", ..]).Select(command => (Name: string.Join(' ', command), Growth: Work.WhyNotLinear(file, text =>
        {
            var path = _folder.File($"{_files++}.panel.yaml", text);
            return () => Run([.. command, path]);
        })));
        steep.Where(command => command.Growth is not null).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Two_versions_are_compared_and_three_merged_in_twice_the_work_for_twice_the_file(LargeFile file)
    {
        var steep = ((string[])["diff", "merge"]).Select(verb => (verb, Growth: Work.WhyNotLinear(file, text =>
        {
            var old = _folder.File($"{_files++}.panel.yaml", text);
            var ours = _folder.File($"{_files++}.panel.yaml", text.Replace("name: Lights", "name: Shed lights", StringComparison.Ordinal));
            var theirs = _folder.File($"{_files++}.panel.yaml", text.Replace("bus: 100 A", "bus: 125 A", StringComparison.Ordinal));
            return () => Run(verb == "diff" ? ["diff", old, ours] : ["merge", "-n", old, ours, theirs]);
        })));
        steep.Where(step => step.Growth is not null).ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void The_editor_opens_edits_and_paints_in_twice_the_work_for_twice_the_file(LargeFile file) =>
        Work.WhyNotLinear(file, text =>
        {
            var path = _folder.File($"{_files++}.panel.yaml", text);
            return () =>
            {
                var session = Session.Open(path).Session!;
                Paint(session);
                session.MoveCursor(new SpaceNumber(5));
                session.Hold(session.Here!);
                session.MoveCursor(new SpaceNumber(7));
                Paint(session);
                session.LetGo();
                session.Do(now => SetField.In(now, Places.Circuit(1).Then("name"), "Pump")).ShouldBeNull();
                session.Undo();
                session.NextFinding();
                Paint(session);
            };
        }).ShouldBeNull();

    public void Dispose() => _folder.Dispose();

    private static void Paint(Session session)
    {
        var layout = EditorLayout.Of(80, 24, session.Face);
        var text = new FaceText(session.Schedule, layout.Panel.Width, new CircuitLoads(session.Assessment).On);
        EditorRows.Title(session, layout.Title.Width);
        EditorRows.Face(session, text, 0, layout.Panel.Height);
        EditorRows.Figures(session, layout.Figures.Width, layout.Figures.Height);
        SummaryRow.Of(session.Assessment, session.Preview?.Assessment, 80);
        EditorRows.Detail(session, PanelTui.Commands.EditorMode.Face, layout.Detail.Width, layout.Detail.Height);
    }

    private static string Run(string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = CommandLineRoot.Run(args, new Streams(() => Stream.Null, output, error), (_, _, _) => ExitCode.Unusable);
        code.ShouldBeLessThan(ExitCode.Unusable, error.ToString());
        return output.ToString();
    }
}
