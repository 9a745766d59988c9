using System.Collections.Immutable;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>
/// A file of marked schedules, parted by `---`: `#~ rule-name` stands on each line that the rule must report.
/// </summary>
/// <remarks>
/// A schedule without `schedule` or `panel` is completed below its last line, so that line numbers stay. Circuits go without
/// names where names play no part, so the rule that asks for them is heard in its own file only.
/// </remarks>
internal sealed class RuleCase(string name)
{
    private const string Mark = "#~";
    private const string AsksForNames = "directory-text-missing";

    private readonly string[] _lines = File.ReadAllLines(Path.Combine(House.Cases("rules"), $"{name}.yaml"));

    public static IEnumerable<string> Names =>
        House.NamesOf("rules");

    public IEnumerable<string> Expected =>
        from line in Enumerable.Range(0, _lines.Length)
        let mark = _lines[line].IndexOf(Mark, StringComparison.Ordinal)
        where mark >= 0
        from rule in _lines[line][(mark + Mark.Length)..].Split(' ', StringSplitOptions.RemoveEmptyEntries)
        select $"line {line + 1}: {rule}";

    public IEnumerable<string> Reported =>
        from told in Told()
        from line in told.Lines
        group line by $"line {line}: {told.Finding.Rule}" into place
        select place.Key;

    /// <summary>Each finding as people read it, with the line it is shown at.</summary>
    public IEnumerable<string> Messages =>
        from told in Told()
        let finding = told.Finding
        select $"{told.Lines[0]}: {Word(finding.Severity)}: {finding.Message} [{finding.Rule}] ({finding.Cite})\n    {finding.Mend}\n";

    public string ApprovedMessages => Path.Combine(House.Cases("rules"), $"{name}.expected");

    private IEnumerable<(Finding Finding, ImmutableArray<int> Lines)> Told() => Schedules().SelectMany(Findings);

    /// <summary>Each schedule with blank lines in place of the others, so that line numbers stay.</summary>
    private IEnumerable<string> Schedules()
    {
        for (var first = 0; first < _lines.Length;)
        {
            var count = _lines.Skip(first).TakeWhile(line => line != "---").Count();
            yield return Completed([.. Enumerable.Repeat("", first), .. _lines.Skip(first).Take(count)]);
            first += count + 1;
        }
    }

    private static string Completed(string[] lines)
    {
        string[] header = ["schedule: 1", "panel: {system: 120/240 V 1ph 3W, spaces: 42}"];
        var missing = header.Where(line => !lines.Any(one => KeyOf(one) == KeyOf(line)));
        return string.Concat(lines.Concat(missing).Select(line => $"{line}\n"));
    }

    private static string KeyOf(string line) => line.Split(':')[0];

    private IEnumerable<(Finding Finding, ImmutableArray<int> Lines)> Findings(string text)
    {
        var snapshot = Reading.Schedules.Snapshot(text);
        snapshot.Diagnostics.ShouldBeEmpty();
        return
            from finding in snapshot.Assessment.ShouldNotBeNull().Findings
            where finding.Rule != AsksForNames || name == AsksForNames
            select (finding, Lines(snapshot, finding));
    }

    private static ImmutableArray<int> Lines(Snapshot snapshot, Finding finding) =>
        [.. snapshot.Places.SpansOf(finding).Select(span => snapshot.Source.PositionOf(span.Start).Line)];

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };
}
