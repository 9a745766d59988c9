using System.Globalization;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;
using YamlDotNet.RepresentationModel;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>Random merges against what they should come to. PANELTUI_CAMPAIGN=n runs n, PANELTUI_SEED=n starts elsewhere.</summary>
public class HiddenTruthTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void With_ids_no_merge_is_wrong_and_no_conflict_is_missed(bool inBraces)
    {
        var tally = Run(Setting("PANELTUI_CAMPAIGN", 600), withIds: true, inBraces);
        output.WriteLine(tally.ToString());
        tally.Wrong.ShouldBeEmpty();
    }

    [Fact]
    public void Without_ids_few_merges_are_wrong()
    {
        var runs = Setting("PANELTUI_CAMPAIGN", 600);
        var tally = Run(runs, withIds: false, inBraces: false);
        output.WriteLine(tally.ToString());
        foreach (var wrong in tally.Wrong) output.WriteLine(wrong);
        tally.Wrong.Count.ShouldBeLessThan(1 + (runs / 50));
    }

    private static MergeTally Run(int runs, bool withIds, bool inBraces)
    {
        var tally = new MergeTally();
        var first = Setting("PANELTUI_SEED", 0);
        for (var seed = first; seed < first + runs; seed++)
        {
            var dice = new Dice(seed);
            var was = Truth.Of(dice);
            var (ours, theirs) = (was.Changed(dice, 50), was.Changed(dice, 60));
            Judge(seed, TrueMerge.Of(was, ours, theirs), Merge(was, ours, theirs, withIds, inBraces), tally);
        }

        return tally;
    }

    private static ScheduleMerge Merge(Truth was, Truth ours, Truth theirs, bool withIds, bool inBraces)
    {
        SourceText Text(Truth truth) => SourceText.FromString(truth.Yaml(withIds, inBraces));
        return ScheduleMerge.Of(Text(was), Text(ours), Text(theirs));
    }

    private static void Judge(int seed, TrueMerge truth, ScheduleMerge merge, MergeTally tally)
    {
        if (merge.WhyNot is { } why)
        {
            tally.Wrong.Add($"seed {seed}: {why}");
            return;
        }

        if (!merge.IsClean)
        {
            if (truth.HasConflict) tally.RightlyAsked++;
            else tally.AskedTooMuch++;
            Facts(merge.Settled(MergeSide.Ours).Text).ShouldNotBeEmpty();
            Facts(merge.Settled(MergeSide.Theirs).Text).ShouldNotBeEmpty();
            return;
        }

        if (truth.HasConflict) tally.Wrong.Add($"seed {seed}: missed a conflict");
        else if (!Facts(merge.Settled().Text).SequenceEqual(truth.Facts))
            tally.Wrong.Add($"seed {seed}: should say {string.Join("; ", truth.Facts)} and says\n{merge.Settled().Text}");
        else tally.Right++;
    }

    // By another reader of YAML, which knows nothing of schedules.
    private static string[] Facts(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        var top = (YamlMappingNode)stream.Documents[0].RootNode;
        var circuits = top["circuits"] is YamlSequenceNode list ? list.Children : [];
        return
        [
            $"bus {top["panel"]["bus"]}",
            .. circuits.Select(circuit => $"{circuit["space"]} {circuit["name"]} {circuit["breaker"]} {circuit["loads"][0]["rating"]}").Order(StringComparer.Ordinal),
        ];
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : otherwise;
}

/// <summary>How random merges came out.</summary>
internal sealed class MergeTally
{
    public int Right { get; set; }

    public int RightlyAsked { get; set; }

    public int AskedTooMuch { get; set; }

    public List<string> Wrong { get; } = [];

    public override string ToString() => $"{Right} right, {RightlyAsked} rightly asked, {AskedTooMuch} asked too much, {Wrong.Count} wrong or missed";
}
