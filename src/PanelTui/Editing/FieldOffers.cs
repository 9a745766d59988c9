using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Editing;

/// <summary>What may be chosen for a key while it is typed: words, sizes, and the names that the file itself has.</summary>
internal static class FieldOffers
{
    public static ImmutableArray<string> Of(Session session, YamlPath path, string typed)
    {
        var field = FieldBook.At(path)!;
        ImmutableArray<string> all = [.. FromFile(session, field), .. field.Offered];
        if (field.Shape != FieldShape.List) return [.. Matching(all, typed).Concat(field.Meant(typed)).Distinct()];
        var comma = typed.LastIndexOf(',') + 1;
        var before = comma == 0 ? "" : $"{typed[..comma]} ";
        return [.. Matching(all, typed[comma..].Trim()).Select(one => before + one)];
    }

    /// <summary>Those that begin with the text, then those that have it within; all for no text.</summary>
    public static IEnumerable<string> Matching(IEnumerable<string> all, string typed)
    {
        var words = all.ToList();
        return words.Where(word => word.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .Concat(words.Where(word => word.Contains(typed, StringComparison.OrdinalIgnoreCase)))
            .Distinct();
    }

    private static IEnumerable<string> FromFile(Session session, Field field) => field.Path switch
    {
        "scenarios[].running" => Ids(session).Prepend("all"),
        "scenarios[].except" or "scenarios[].starting" => Ids(session),
        "circuits[].space" or "accepted[].space" => Spaces(session.Schedule, isOpen: field.Path == "circuits[].space"),
        "panel.tandem_spaces" => Enumerable.Range(1, session.Schedule.Panel.Spaces).Select(Number),
        "circuits[].multiwire" => session.Schedule.Circuits.Select(circuit => circuit.Multiwire).OfType<string>().Distinct(),
        "circuits[].loads[].group" => session.Schedule.Circuits.SelectMany(circuit => circuit.Loads).Select(load => load.Group).OfType<string>().Distinct(),
        "circuits[].verified" => [TimeProvider.System.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)],
        "accepted[].rule" => session.Assessment.Findings.Select(finding => finding.Rule).Distinct(),
        "circuits[].poles" or "circuits[].loads[].pole" => Enumerable.Range(1, session.Schedule.Panel.System.MostPoles).Select(Number),
        _ => [],
    };

    private static IEnumerable<string> Ids(Session session) => session.Schedule.Circuits.Select(circuit => circuit.Id).OfType<string>();

    private static IEnumerable<string> Spaces(Schedule schedule, bool isOpen)
    {
        var taken = schedule.Circuits.SelectMany(circuit => circuit.Spaces).ToList();
        return isOpen
            ? Enumerable.Range(1, schedule.Panel.Spaces).Where(space => !taken.Exists(new SpaceNumber(space).Overlaps)).Select(Number)
            : taken.Order().Select(space => $"{space}");
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
