using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>Random edits on random files. PANELTUI_CAMPAIGN=n runs n files, PANELTUI_SEED=n starts elsewhere.</summary>
public class CampaignTests(ITestOutputHelper output)
{
    private const int EditsPerFile = 4;

    [Fact]
    public void An_edit_means_what_it_should_and_touches_nothing_else()
    {
        var files = Setting("PANELTUI_CAMPAIGN", 3_000);
        var first = Setting("PANELTUI_SEED", 0);
        var tally = new Tally();
        for (var seed = first; seed < first + files; seed++) Run(seed, tally);
        output.WriteLine(tally.ToString());
        output.WriteLine(tally.RefusalsByReason());
        tally.Broken.ShouldBeEmpty();
        tally.Unreadable.ShouldBeLessThan(files / 10);
        tally.Refused.ShouldBeLessThan(tally.Accepted / 20);
    }

    [Theory]
    [InlineData(456)] // lines of text replaced by others
    [InlineData(1361)] // a text that ends in a break, added at the end of a file without one
    [InlineData(2350)] // lines kept by |+ moved to the end of such a file
    [InlineData(3102)] // a value put into brackets that hold a line break
    [InlineData(4336)] // an empty list in a list of empty lists becomes one of lines
    public void A_file_that_once_broke_a_law_keeps_them_now(int seed)
    {
        var tally = new Tally();
        Run(seed, tally);
        tally.Broken.ShouldBeEmpty();
    }

    private static void Run(int seed, Tally tally)
    {
        var dice = new Dice(~seed);
        var text = RandomYaml.Of(seed);
        if (TreeOf(text) is not { } tree)
        {
            tally.Unreadable++;
            return;
        }

        for (var count = 0; count < EditsPerFile; count++)
        {
            if (RandomEdit.Of(dice, tree) is not { } edit) continue;
            tree = Try(edit, tree, seed, tally);
        }
    }

    private static YamlTree Try(RandomEdit edit, YamlTree tree, int seed, Tally tally)
    {
        try
        {
            var change = edit.Make(tree);
            var after = change.ApplyTo(tree.Source.Text);
            if (EditLaws.Broken(edit, tree.Source.Text, after, change) is { } law)
                tally.Broken.Add($"seed {seed}: {edit.Name}: {law}\n--- before\n{tree.Source.Text}\n--- after\n{after}");
            tally.Accepted++;
            return TreeOf(after)!;
        }
        catch (CannotEdit refusal)
        {
            tally.Refuse(refusal.Message, $"seed {seed}: {edit.Name}");
            return tree;
        }
    }

    private static YamlTree? TreeOf(string text)
    {
        try
        {
            return YamlTree.Parse(SourceText.FromString(text));
        }
        catch (YamlProblem)
        {
            return null;
        }
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), out var value) ? value : otherwise;
}
