using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests;

/// <summary>Schedules in few words, for tests.</summary>
internal static class Sketch
{
    public static Schedule Of(params ReadOnlySpan<Circuit> circuits) => Of(PanelSystem.SplitPhase, circuits);

    public static Schedule Of(PanelSystem system, params ReadOnlySpan<Circuit> circuits) => new()
    {
        Panel = new Panel { System = system, Spaces = 42 },
        Circuits = Numbered(circuits),
    };

    /// <summary>One-pole circuit with these loads.</summary>
    public static Circuit OnePole(int space, params ReadOnlySpan<Load> loads) => Circuit(space, 1, loads);

    public static Circuit TwoPole(int space, params ReadOnlySpan<Load> loads) => Circuit(space, 2, loads);

    public static Circuit ThreePole(int space, params ReadOnlySpan<Load> loads) => Circuit(space, 3, loads);

    public static Circuit Circuit(int space, int poles, params ReadOnlySpan<Load> loads) => new()
    {
        Ordinal = 0,
        Space = new SpaceNumber(space),
        Id = $"c{space}",
        Name = $"Circuit {space}",
        Breaker = new Breaker(20.A, poles),
        Loads = [.. loads],
    };

    public static Load Load(LoadRating? rating, LoadKind kind = LoadKind.Other) =>
        new() { Kind = kind, Rating = rating, Start = Start.AtRunningCurrent };

    public static Load Of(VoltAmperes power, LoadKind kind = LoadKind.Other) =>
        Load(new LoadRating.InVoltAmperes(power), kind);

    public static Load Of(Watts power, LoadKind kind = LoadKind.Other) => Load(new LoadRating.InWatts(power), kind);

    public static Load Of(Amperes current, LoadKind kind = LoadKind.Other) =>
        Load(new LoadRating.InAmperes(current), kind);

    public static Load Of(Horsepower output, LoadKind kind = LoadKind.Motor) =>
        Load(new LoadRating.InHorsepower(output), kind);

    public static Assessment Assessed(this Schedule schedule) => Assessment.Of(schedule);

    public static Schedule By(this Schedule schedule, DemandMethodName method) =>
        schedule with { Demand = new DemandBasis { Method = method } };

    public static Schedule In(this Schedule schedule, CodeEdition edition) =>
        schedule with { Code = schedule.Code with { Edition = edition } };

    public static Schedule With(this Schedule schedule, params ReadOnlySpan<Scenario> scenarios) =>
        schedule with { Scenarios = [.. scenarios] };

    public static ImmutableArray<Circuit> Numbered(params ReadOnlySpan<Circuit> circuits)
    {
        var numbered = circuits.ToArray();
        for (var ordinal = 0; ordinal < numbered.Length; ordinal++)
            numbered[ordinal] = numbered[ordinal] with { Ordinal = ordinal };
        return [.. numbered];
    }
}
