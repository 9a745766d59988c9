using System.Globalization;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;

namespace PanelTui.Documents.Tests.Demand;

/// <summary>One schedule against the figures that a source gives for it.</summary>
internal sealed class DemandTrial(YamlNode expected, Snapshot snapshot)
{
    /// <summary>Where the source rounds on the way the case says so; else figures agree to a millionth.</summary>
    private const decimal Exact = 0.000001m;

    private readonly YamlNode? _tolerance = expected.ValueOf("tolerance");

    public decimal Within => _tolerance?.ValueOf("within") is { } within ? Number(within) : Exact;

    public bool SaysWhy => _tolerance is null || _tolerance.ValueOf("because") is { Value.Length: > 0 };

    public int Figures => Flat(expected.ValueOf("expect"), "").Count() + Lines.Length;

    /// <summary>What the reader says of the schedule: nothing, if it is the user's own format.</summary>
    public IEnumerable<string> Diagnostics => Reading.Schedules.Lines(snapshot);

    /// <summary>`va: expected 18600, but was 18601`, for each figure that is not as the source has it.</summary>
    public IEnumerable<string> Differences =>
    [
        .. from figure in Flat(expected.ValueOf("expect"), "")
           let found = Figure.Of(Assessment, figure.Path)
           where Math.Abs(found - figure.Value) > Within
           select $"{figure.Path}: expected {figure.Value}, but was {found}",
        .. LineDifferences(),
    ];

    private Assessment Assessment => snapshot.Assessment.ShouldNotBeNull();

    private (string Label, decimal Value)[] Lines =>
        [.. (expected.ValueOf("lines")?.Pairs ?? []).Select(pair => (pair.Key.Value, Number(pair.Value)))];

    /// <summary>Every line in its order; the case may leave off the end of a label.</summary>
    private IEnumerable<string> LineDifferences()
    {
        if (Lines.Length == 0) return [];
        var found = Assessment.Demand.ShouldNotBeNull().Steps.ToArray();
        if (found.Length != Lines.Length)
            return [$"{Lines.Length} lines expected, but was {string.Join(" | ", found.Select(step => step.Label))}"];
        return Lines.Zip(found)
            .Where(pair => !pair.Second.Label.StartsWith(pair.First.Label, StringComparison.Ordinal)
                || Math.Abs(pair.Second.Value - pair.First.Value) > Within)
            .Select(pair => $"{pair.First}, but was ({pair.Second.Label}, {pair.Second.Value})");
    }

    private static IEnumerable<(string Path, decimal Value)> Flat(YamlNode? node, string path) => node switch
    {
        null => [],
        { IsMapping: true } => node.Pairs.SelectMany(pair => Flat(pair.Value, $"{path}.{pair.Key.Value}".Trim('.'))),
        _ => [(path, Number(node))],
    };

    private static decimal Number(YamlNode node) => decimal.Parse(node.Value, CultureInfo.InvariantCulture);
}
