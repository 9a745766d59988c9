using System.Globalization;
using System.Text.RegularExpressions;
using PanelTui.Tests.CommandLine;
using PanelTui.Tests.Screens;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 2: a new schedule from a few questions, with no knowledge of the format.</summary>
public partial class StartAPanelTests
{
    /// <summary>Under two minutes: at six seconds a question, with Enter for what is offered.</summary>
    private const int MostQuestions = 20;

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Enter_to_every_question_makes_a_commented_file_that_opens_and_checks(int columns, int rows)
    {
        using var folder = new TempFolder();
        var file = folder.File("barn.panel.yaml");
        var ran = Ran.Answering(Enumerable.Repeat("", 60), "new", file);
        ran.Code.ShouldBe(0, ran.Error);
        Question().Matches(ran.Out).Max(asked => int.Parse(asked.Groups[1].Value, CultureInfo.InvariantCulture)).ShouldBeLessThanOrEqualTo(MostQuestions);
        var text = File.ReadAllText(file);
        text.Split('\n').Count(line => line.Contains('#', StringComparison.Ordinal)).ShouldBeGreaterThan(5);
        Ran.Of("check", file).Code.ShouldBe(0);
        using var editor = new OpenEditor(text, columns, rows);
        editor.Screen.ShouldContain("Findings");
    }

    [GeneratedRegex(@"^ ?(\d+) \S", RegexOptions.Multiline)]
    private static partial Regex Question();
}
