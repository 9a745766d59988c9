using System.Globalization;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>
/// Files made to break a reader, and thousands of schedules with characters gone wrong: always a schedule or an
/// error.
/// </summary>
public class HostileFileTests
{
    private const string Header = Schedules.Header + "circuits:\n";

    private const string Circuit = "  - space: 1\n    breaker: 20 A\n    loads:\n";

    private const string Laughs =
        "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\n"
        + "d: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c]\ne: &e [*d,*d,*d,*d,*d,*d,*d,*d,*d]\n"
        + "f: &f [*e,*e,*e,*e,*e,*e,*e,*e,*e]\n";

    public static TheoryData<string, string> Corpus => new()
    {
        { "brackets", new string('[', 100_000) },
        { "braces", Repeated("{a: ", 20_000) },
        { "dashes", Repeated("- ", 50_000) },
        { "questions", Repeated("? ", 20_000) },
        { "laughs", Laughs },
        { "laughs in circuits", $"{Schedules.Header}{Laughs}circuits: *f\n" },
        { "a cycle", $"{Schedules.Header}circuits: &c [*c]\n" },
        { "merge bomb", $"{Schedules.Header}x: &x {{<<: *x}}\ncircuits: [*x]\n" },
        { "a long scalar", $"{Schedules.Header}circuits: {new string('x', 3_000_000)}\n" },
        { "a million blank lines", $"{Schedules.Header}{new string('\n', 1_000_000)}" },
        { "many keys", string.Concat(Enumerable.Range(0, 100_000).Select(key => $"k{key}: 1\n")) },
        { "many circuits", $"{Header}{Repeated("  - {space: 1, breaker: 20 A}\n", 20_000)}" },
        { "many loads", $"{Header}{Circuit}{Repeated("      - {kind: motor, rating: 1 hp}\n", 20_000)}" },
        { "many ids", $"{Header}{Repeated("  - {id: a, space: 1, breaker: 20 A}\n", 500)}" },
        { "many documents", Repeated("---\na: 1\n", 50_000) },
        { "huge numbers", $"{Header}  - {{space: 99999999999999999999, breaker: 1e999 A, poles: 999999999999}}\n" },
        { "a long unknown key", $"{Schedules.Header}{new string('k', 900)}: 1\n" },
        { "tags", $"{Schedules.Header}circuits: !System.IO.FileInfo [!!python/object {{space: 1, breaker: 20 A}}]\n" },
    };

    [Theory]
    [MemberData(nameof(Corpus))]
    public void A_hostile_file_is_read_or_refused_with_an_error(string name, string text) =>
        Outcome(text).ShouldBeTrue(name);

    [Fact]
    public void Random_mistakes_in_a_schedule_are_read_or_refused_with_an_error()
    {
        var dice = new Dice(20_261_125);
        var tries = Campaign(5_000);
        var (schedules, trees) = (0, 0);
        for (var left = tries; left > 0; left--)
        {
            var text = Mutation.Of(Schedules.EveryKey, dice);
            Outcome(text).ShouldBeTrue(text);
            if (Try(text) is not { Tree: not null } read) continue;
            trees++;
            if (!read.HasErrors) schedules++;
        }

        trees.ShouldBeGreaterThan(tries / 4, "Too few mistakes get past the YAML reader to try this one.");
        schedules.ShouldBeInRange(tries / 20, trees * 9 / 10);
    }

    [Fact]
    public void Random_mistakes_in_an_edit_are_made_or_refused_and_leave_a_file_that_can_be_read()
    {
        var dice = new Dice(20_261_126);
        var snapshot = Schedules.Snapshot(Schedules.EveryKey);
        for (var left = Campaign(1_000); left > 0; left--)
        {
            var (path, text) = Mutation.OfField(dice);
            var intended = Documents.Intents.SetField.In(snapshot, path, text);
            intended.IsPossible.ShouldBe(intended.After is { HasErrors: false }, $"{path} {text}");
        }
    }

    private static int Campaign(int usual) =>
        Environment.GetEnvironmentVariable("PANELTUI_CAMPAIGN") is { } wanted
            ? int.Parse(wanted, CultureInfo.InvariantCulture)
            : usual;

    /// <summary>
    /// Whether there is either a schedule without error or an error without schedule; a text that is none is an
    /// error, too.
    /// </summary>
    private static bool Outcome(string text) => Try(text) is not { } snapshot
        || (snapshot.Diagnostics.Any(found => found.IsError) == snapshot.HasErrors
            && snapshot.Diagnostics.Length <= 100
            && snapshot.Diagnostics.All(found => found.Span.End <= text.Length && found.Span.Start >= 0));

    private static string Repeated(string text, int times) => string.Concat(Enumerable.Repeat(text, times));

    private static Snapshot? Try(string text)
    {
        try
        {
            return Snapshot.Of(SourceText.FromString(text));
        }
        catch (YamlProblem)
        {
            return null;
        }
    }
}
