using System.Collections.Immutable;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>A load with the number by which the truth knows it.</summary>
internal sealed record HiddenLoad(int Number, string Kind, string Rating, string? Duty);

/// <summary>A breaker with the number by which the truth knows it, whatever the file says.</summary>
internal sealed record HiddenCircuit(int Number, string? Id, int Space, string Name, string Breaker, int Poles)
{
    public string? Wire { get; init; }

    public string? Length { get; init; }

    public ImmutableArray<HiddenLoad> Loads { get; init; } = [];

    public string? Note { get; init; }

    public IEnumerable<int> Spaces => Enumerable.Range(0, Poles).Select(pole => Space + (2 * pole));

    /// <summary>What it says about the panel, on one line; not its note.</summary>
    public string Fact => $"circuit {Id ?? "-"} {Space} {Name} {Breaker} {Poles} {Wire ?? "-"} {Length ?? "-"}"
        + string.Concat(Loads.Select(LoadFact).Order(StringComparer.Ordinal));

    public static string LoadFact(HiddenLoad load) => $" [{load.Kind} {load.Rating} {load.Duty ?? "-"}]";
}

/// <summary>A scenario with the number by which the truth knows it; it names circuits by their numbers.</summary>
internal sealed record HiddenScenario(int Number, string Name, ImmutableArray<int> Running);

/// <summary>A schedule as one person has it in mind.</summary>
internal sealed record HiddenSchedule(string Bus, int PanelSpaces, ImmutableArray<HiddenCircuit> Circuits, ImmutableArray<HiddenScenario> Scenarios)
{
    /// <summary>One line for each thing that the panel is, in no order.</summary>
    public ImmutableArray<string> Facts =>
    [
        .. new[] { $"panel {Bus} {PanelSpaces}" }
            .Concat(Circuits.Select(circuit => circuit.Fact))
            .Concat(Scenarios.Select(scenario => $"scenario {scenario.Name}: {string.Join(' ', scenario.Running.Select(IdOf).Order(StringComparer.Ordinal))}"))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>True when every breaker has its spaces to itself, inside the panel.</summary>
    public bool IsSound => Overlaps.IsEmpty && Circuits.All(circuit => circuit.Spaces.All(space => space <= PanelSpaces));

    /// <summary>True when a value has no unit, or is not one of the words that the format knows.</summary>
    public bool HasTrouble =>
        Circuits.Any(circuit => !circuit.Breaker.EndsWith(" A", StringComparison.Ordinal) || circuit.Loads.Any(load => load.Kind == "heating"));

    public ImmutableHashSet<int> Overlaps =>
        [.. Circuits.SelectMany(circuit => circuit.Spaces).GroupBy(space => space).Where(group => group.Count() > 1).Select(group => group.Key)];

    public HiddenCircuit? Find(int number) => Circuits.FirstOrDefault(circuit => circuit.Number == number);

    public HiddenSchedule With(HiddenCircuit circuit) =>
        this with { Circuits = [.. Circuits.Select(one => one.Number == circuit.Number ? circuit : one)] };

    public string IdOf(int number) => Find(number)?.Id ?? $"gone-{number}";

    public string Yaml(bool inBraces)
    {
        var lines = new List<string> { "schedule: 1", "panel:", "  system: 120/240 V 1ph 3W", $"  spaces: {PanelSpaces}", $"  bus: {Bus}", "circuits:" };
        foreach (var circuit in Circuits)
        {
            if (circuit.Note is { } note) lines.Add($"  # {note}");
            lines.AddRange(inBraces ? Braces(circuit) : Block(circuit));
        }

        if (Circuits.IsEmpty) lines[^1] = "circuits: []";
        if (!Scenarios.IsEmpty) lines.Add("scenarios:");
        foreach (var scenario in Scenarios)
            lines.AddRange([$"  - name: {scenario.Name}", $"    running: [{string.Join(", ", scenario.Running.Select(IdOf))}]"]);
        return string.Concat(lines.Select(line => $"{line}\n"));
    }

    private static IEnumerable<string> Braces(HiddenCircuit circuit)
    {
        var loads = string.Join(", ", circuit.Loads.Select(load => $"{{{string.Join(", ", LoadKeys(load))}}}"));
        return [$"  - {{{string.Join(", ", Keys(circuit))}{(loads.Length == 0 ? "" : $", loads: [{loads}]")}}}"];
    }

    private static IEnumerable<string> Block(HiddenCircuit circuit)
    {
        foreach (var (key, index) in Keys(circuit).Select((key, index) => (key, index))) yield return $"  {(index == 0 ? "- " : "  ")}{key}";
        if (!circuit.Loads.IsEmpty) yield return "    loads:";
        foreach (var load in circuit.Loads) yield return $"      - {{{string.Join(", ", LoadKeys(load))}}}";
    }

    private static IEnumerable<string> Keys(HiddenCircuit circuit)
    {
        if (circuit.Id is { } id) yield return $"id: {id}";
        yield return $"space: {circuit.Space}";
        yield return $"name: {circuit.Name}";
        yield return $"breaker: {circuit.Breaker}";
        if (circuit.Poles > 1) yield return $"poles: {circuit.Poles}";
        if (circuit.Wire is { } wire) yield return $"wire: {wire}";
        if (circuit.Length is { } length) yield return $"length: {length}";
    }

    private static IEnumerable<string> LoadKeys(HiddenLoad load)
    {
        yield return $"kind: {load.Kind}";
        yield return $"rating: {load.Rating}";
        if (load.Duty is { } duty) yield return $"duty: {duty}";
    }
}
