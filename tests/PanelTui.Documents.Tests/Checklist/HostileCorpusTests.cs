using System.Diagnostics;
using PanelTui.Documents.Files;
using PanelTui.Documents.Tests.Files;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Checklist;

/// <summary>The hostile corpus as files on the disk: each gets one clear answer with a place, and stays as it is to the byte.</summary>
public class HostileCorpusTests(ITestOutputHelper output) : TestFolder
{
    public static TheoryData<string> Items => [.. HostileCorpus.Rows.Select(row => row.Item)];

    [Theory]
    [MemberData(nameof(Items))]
    public void A_hostile_file_is_answered_with_a_place_and_never_written(string item)
    {
        var row = HostileCorpus.Rows.Single(row => row.Item == item);
        var path = PathOf("hostile.panel.yaml");
        File.WriteAllBytes(path, row.File);
        var clock = Stopwatch.StartNew();
        var said = Said(path);
        output.WriteLine($"{clock.ElapsedMilliseconds} ms, {row.File.Length} bytes: {said}");
        said.ShouldContain(row.Expected);
        File.ReadAllBytes(path).ShouldBe(row.File);
        Names().ShouldBe(["hostile.panel.yaml"]);
    }

    [Fact]
    public void No_item_of_the_corpus_is_missed()
    {
        Items.Count.ShouldBe(81);
        HostileCorpus.Rows.Select(row => row.Item).ShouldBeUnique();
    }

    private static string Said(string path)
    {
        try
        {
            var snapshot = Snapshot.Of(ScheduleFile.Load(path).Source);
            return snapshot.Diagnostics is [var first, ..]
                ? $"{snapshot.Source.PositionOf(first.Span.Start)}: {first.Message}"
                : "opens";
        }
        catch (YamlProblem problem)
        {
            return $"{problem.Position}: {problem.Message}";
        }
    }
}
