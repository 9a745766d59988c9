using PanelTui.Presentation;
using PanelTui.Sheets;
using PanelTui.Tests.CommandLine;

namespace PanelTui.Tests.Sheets;

/// <summary>The load sheet says what `calc --why` says.</summary>
public class LoadSheetTests
{
    public static TheoryData<string> Examples => [.. SheetCases.Examples];

    [Theory, MemberData(nameof(Examples))]
    public void Every_step_of_every_figure_is_that_of_calc_why(string path)
    {
        var records = LoadSheet.Of(SheetCases.Read(File.ReadAllText(path))).Records!.Rows;
        foreach (var figure in records.GroupBy(row => row[0].Text).AtLeastOne())
        {
            var why = Ran.Of("calc", path, "--why", figure.Key).Out.Split('\n').Skip(1).Where(line => line.Length > 0).ToArray();
            why.Length.ShouldBe(figure.Count());
            foreach (var (step, line) in figure.Zip(why).AtLeastOne())
            {
                line.ShouldContain(DisplayText.Clean(step[1].Text));
                line.ShouldContain($" {step[2].Text} {step[3].Text}   {step[4].Text}");
            }
        }
    }

    [Theory, MemberData(nameof(Examples))]
    public void It_has_every_figure_that_calc_knows(string path)
    {
        var assessment = SheetCases.Read(File.ReadAllText(path));
        LoadSheet.Of(assessment).Records!.Rows.Select(row => row[0].Text).Distinct().ShouldBe(assessment.Figures);
    }

    [Fact]
    public void An_accepted_finding_stands_there_with_its_reason()
    {
        var text = SheetCases.TextNamed("Lights") + "\naccepted:\n  - {rule: directory-text-duplicate, because: one room}\n";
        LoadSheet.Of(SheetCases.Read(text)).Blocks.OfType<Block.Paragraph>()
            .ShouldContain(paragraph => paragraph.Text.StartsWith("Accepted", StringComparison.Ordinal) && paragraph.Text.EndsWith("Reason: one room", StringComparison.Ordinal));
    }

    [Fact]
    public void There_is_a_place_to_sign() =>
        LoadSheet.Of(SheetCases.Named("Mill")).Blocks.OfType<Block.Signatures>().Single().Lines.Length.ShouldBe(2);
}
