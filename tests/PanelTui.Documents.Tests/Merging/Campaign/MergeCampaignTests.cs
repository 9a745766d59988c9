using System.Diagnostics;
using System.Globalization;
using PanelTui.Documents.Merging;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>
/// Random merges with a known right answer, a third without ids, a third with a value that cannot be read.
/// PANELTUI_CAMPAIGN=n runs n, PANELTUI_SEED=n starts elsewhere, PANELTUI_SHOW=n writes out the first n.
/// </summary>
public class MergeCampaignTests(ITestOutputHelper output)
{
    [Fact]
    public void No_merge_is_silently_wrong_and_few_questions_are_needless()
    {
        var (runs, first, shown) = (Setting("PANELTUI_CAMPAIGN", 150), Setting("PANELTUI_SEED", 0), Setting("PANELTUI_SHOW", 0));
        var tally = new MergeTally();
        for (var seed = first; seed < first + runs; seed++)
        {
            var one = new CampaignMerge(seed);
            var merge = one.Merge();
            var outcome = one.Judge(merge);
            tally.Add(one, outcome);
            if (outcome == Outcome.Wrong) tally.Wrong.Add($"{one}--- merged\n{merge.Settled().Text}");
            if (outcome == Outcome.AskedNeedlessly && LineMerge(one) is { } lines && one.SaysRight(lines)) tally.WorseThanLines.Add($"{one}");
            if (seed < first + shown || outcome == Outcome.AskedNeedlessly && tally.Shown++ < shown) output.WriteLine($"{outcome} {one}--- merged\n{Text(merge)}\n");
        }

        output.WriteLine(tally.ToString());
        foreach (var wrong in tally.Wrong.Concat(tally.WorseThanLines).Take(10)) output.WriteLine(wrong);
        tally.Of(Outcome.Right).ShouldBeGreaterThan(runs / 10);
        tally.Of(Outcome.RightlyAsked).ShouldBeGreaterThan(runs / 10);
        tally.Wrong.Count.ShouldBe(0);
        tally.WorseThanLines.Count.ShouldBe(0);
        tally.Of(Outcome.AskedNeedlessly).ShouldBeLessThanOrEqualTo(runs / 20);
    }

    private static string Text(ScheduleMerge merge) => merge.WhyNot ?? merge.WithMarkers(MarkerLabels.Default);

    // Git's merge of the lines; null where it asks, too.
    private static string? LineMerge(CampaignMerge one)
    {
        var folder = Directory.CreateTempSubdirectory("paneltui-lines-");
        try
        {
            string Write(string name, string text)
            {
                var path = Path.Combine(folder.FullName, name);
                File.WriteAllText(path, text);
                return path;
            }

            var start = new ProcessStartInfo("git") { RedirectStandardOutput = true, WorkingDirectory = folder.FullName };
            string[] arguments = ["merge-file", "-p", Write("ours", one.Ours), Write("was", one.Was), Write("theirs", one.Theirs)];
            foreach (var argument in arguments) start.ArgumentList.Add(argument);
            using var git = Process.Start(start)!;
            var merged = git.StandardOutput.ReadToEnd();
            git.WaitForExit();
            return git.ExitCode == 0 ? merged : null;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : otherwise;
}
