using PanelTui.Documents.Reading;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>Short ways from a text to what is read of it.</summary>
internal static class Schedules
{
    public const string Header = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 20}\n";

    public static string EveryKey { get; } = House.Case("reading", "every-key.yaml");

    public static Snapshot Snapshot(string text) => Documents.Snapshot.Of(SourceText.FromString(text));

    public static Schedule Read(string text)
    {
        var snapshot = Snapshot(text);
        snapshot.Diagnostics.Where(found => found.IsError).Select(found => found.Message).ShouldBeEmpty();
        return snapshot.Schedule.ShouldNotBeNull();
    }

    public static Circuit Circuit(string flow) =>
        Read($"{Header}circuits:\n  - {flow}\n").Circuits.ShouldHaveSingleItem();

    public static Load Load(string flow) =>
        Circuit($"{{space: 1, breaker: 20 A, loads: [{flow}]}}").Loads.ShouldHaveSingleItem();

    /// <summary>`circuits/0/breaker` as a path.</summary>
    public static YamlPath Path(string text) => text.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate(
        YamlPath.Root,
        (path, step) => int.TryParse(step, out var index) ? path.Then(index) : path.Then(step));

    /// <summary>Each diagnostic as it is printed: `3:7: error: message`.</summary>
    public static IEnumerable<string> Lines(Snapshot snapshot) =>
        snapshot.Diagnostics.Select(found =>
            $"{snapshot.Source.PositionOf(found.Span.Start)}: {Word(found.Severity)}: {found.Message} [{found.Code}]");

    private static string Word(DiagnosticSeverity severity) => severity == DiagnosticSeverity.Error ? "error" : "note";
}
