using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>
/// Broken files of tests/Cases/errors, and the exact sentences that lie beside them. PANELTUI_ACCEPT=1 writes
/// those.
/// </summary>
public class ErrorCaseTests
{
    public static TheoryData<string> Cases =>
        [.. House.NamesOf("errors")];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_file_says_what_was_found_and_what_was_expected(string name)
    {
        var found = string.Concat(Sentences(name).Select(line => $"{line}\n"));
        var expected = Path.Combine(House.Cases("errors"), $"{name}.expected");
        if (Environment.GetEnvironmentVariable("PANELTUI_ACCEPT") == "1") File.WriteAllText(expected, found);
        found.ShouldBe(File.ReadAllText(expected));
    }

    private static IEnumerable<string> Sentences(string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(House.Cases("errors"), $"{name}.yaml"));
        try
        {
            return Schedules.Lines(Snapshot.Of(SourceText.FromBytes(bytes)));
        }
        catch (YamlProblem problem)
        {
            var diagnostic = ScheduleReader.Unreadable(problem);
            return [$"{problem.Position}: error: {diagnostic.Message} [{diagnostic.Code}]"];
        }
    }
}
