using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Beginning;

/// <summary>The commented schedule that the answers make: what was left for later stands there as a comment, with an example.</summary>
internal static class BeginningText
{
    /// <summary>Where the comments beside the values begin.</summary>
    private const int CommentColumn = 32;

    private static readonly ImmutableArray<(string Section, ImmutableArray<string> Keys)> Sections =
    [
        ("panel", ["name", "location", "system", "spaces", "bus", "main", "tandem_spaces", "neutral_bonded"]),
        ("code", ["edition", "occupancy"]),
        ("demand", ["method"]),
        ("feeder", ["ocpd", "conductor", "length"]),
        ("transfer", ["kind", "rating", "switches_neutral"]),
        ("source", ["kind", "arrangement", "continuous", "continuous_per_leg", "surge", "outlet", "ocpd", "neutral"]),
    ];

    /// <summary>What nobody need be asked for a first schedule.</summary>
    private static readonly ImmutableArray<(string Path, string Value)> Given =
        [("demand.method", "selected"), ("panel.neutral_bonded", "no")];

    public static string Of(Answers answers)
    {
        var text = new StringBuilder("""
            # The schedule of one standby panel. Quantities carry their unit: 20 A, 1.5 kW, 60 ft.
            # Open it with `paneltui FILE`; `paneltui check FILE` tells what to look at.
            # It does not replace the code in force, the authority having jurisdiction or licensed practice.
            schedule: 1

            """.ReplaceLineEndings("\n"));
        foreach (var (section, keys) in Sections) Append(text, answers, section, keys);
        AppendCircuits(text, answers);
        text.Append("\nscenarios:\n  - name: Outage\n    running: all                # or a list of ids: [lights, fridge]\n");
        return WithNames(text.ToString(), answers);
    }

    private static void Append(StringBuilder text, Answers answers, string section, ImmutableArray<string> keys)
    {
        var isThere = keys.Any(key => ValueOf(answers, $"{section}.{key}").Length > 0);
        text.Append(CultureInfo.InvariantCulture, $"\n{(isThere ? "" : "# ")}{section}:\n");
        foreach (var key in keys)
        {
            var field = FieldBook.Find($"{section}.{key}")!;
            var value = ValueOf(answers, field.Path);
            var line = value.Length > 0 ? $"  {key}: {(field.IsFreeText ? "\"\"" : value)}" : $"  # {key}: {field.Example}";
            if (!isThere) line = $"#   {key}: {field.Example}";
            text.Append(field.IsFreeText ? $"{line}\n" : $"{line.PadRight(CommentColumn - 1)} # {Remark(field)}\n");
        }
    }

    /// <summary>The words to choose from, else the first clause of what it is for.</summary>
    private static string Remark(Field field) => field.Allowed.IsEmpty || field.Expected == "yes or no"
        ? char.ToLowerInvariant(field.Help[0]) + field.Help[1..].Split(',')[0]
        : field.Expected;

    /// <summary>What found no space, for the person to hear of.</summary>
    public static ImmutableArray<string> LeftOut(Answers answers) =>
        [.. Placed(answers).Where(placed => placed.Space is null).Select(placed => placed.Load.Name)];

    private static ImmutableArray<(UsualLoad Load, SpaceNumber? Space)> Placed(Answers answers) =>
        Placing.Of(answers.Loads, answers.System, int.Parse(answers["panel.spaces"], CultureInfo.InvariantCulture));

    private static string ValueOf(Answers answers, string path) =>
        answers[path] is { Length: > 0 } answer ? answer : Given.FirstOrDefault(given => given.Path == path).Value ?? "";

    private static void AppendCircuits(StringBuilder text, Answers answers)
    {
        var placed = Placed(answers);
        if (placed.IsEmpty)
        {
            text.Append("\n# circuits: place them in the editor, or write them here; docs/format.md shows how\n");
            return;
        }

        text.Append(CultureInfo.InvariantCulture, $"\n# Breakers and loads to start from: {UsualLoads.Remark}. Replace them by what breaker and nameplate say.\ncircuits:\n");
        foreach (var (load, space) in placed)
        {
            if (space is not { } top) text.Append(CultureInfo.InvariantCulture, $"  # no place was found for: {load.Name}, {load.Breaker}{(load.Poles == 2 ? " two-pole" : "")}\n");
            else AppendCircuit(text, load, $"{top}");
        }
    }

    private static void AppendCircuit(StringBuilder text, UsualLoad load, string space)
    {
        var poles = load.Poles == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $"    poles: {load.Poles}\n");
        text.Append(
            CultureInfo.InvariantCulture,
            $"  - id: {load.Id}\n    space: {space}\n    name: {load.Name}\n    breaker: {load.Breaker}\n{poles}    loads:\n      - {{{load.Load}}}\n");
    }

    /// <summary>Puts the person's own words in with the quotes that they need.</summary>
    private static string WithNames(string text, Answers answers)
    {
        var snapshot = Snapshot.Of(SourceText.FromString(text));
        foreach (var key in (string[])["name", "location"])
        {
            if (answers[$"panel.{key}"] is { Length: > 0 } words)
                snapshot = SetField.In(snapshot, YamlPath.Of("panel", key), words).After ?? snapshot;
        }

        return snapshot.Source.Text;
    }
}
