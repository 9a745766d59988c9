using BenchmarkDotNet.Attributes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Benchmarks;

/// <summary>What a scenario on its source costs: 84 circuits with every limit and start, and a course of 72 hours.</summary>
[MemoryDiagnoser]
public class RunningBenchmarks
{
    private const int Circuits = 84;

    private readonly Schedule _schedule = Full();

    private readonly Scenario _all = new() { Name = "All", RunsAll = true };

    [Benchmark(Description = "one scenario of 84 circuits: legs, limits, 28 starts, hours")]
    public ScenarioRun Scenario() => ScenarioRun.Of(_all, _schedule, PlacedLoad.AllOf(_schedule));

    [Benchmark(Description = "shedding order of 84 circuits")]
    public Shedding Shed() => Shedding.Of(Scenario(), _schedule);

    [Benchmark(Description = "72 hours, sun and grid charging that swings by 1 %")]
    public EnergyCourse? Course() => EnergyCourse.Of(_schedule, PerLeg.Of(PanelSystem.SplitPhase, _ => new Watts(700)), Percent.Whole);

    private static Schedule Full() => new()
    {
        Panel = new Panel { System = PanelSystem.SplitPhase, Spaces = Circuits },
        Source = new StandbySource
        {
            Kind = SourceKind.Inverters,
            Arrangement = SourceArrangement.Split,
            ContinuousPerLeg = new Watts(10_000),
            SurgePerLeg = new VoltAmperes(20_000),
            SurgeTime = new Seconds(2),
            Battery = new Battery { Usable = new WattHours(12_000), Reserve = new Percent(25), Efficiency = new Percent(88), Idle = new Watts(60) },
            Charging = new Charging { Power = new Watts(3000), StartsAt = new Percent(50), StopsAt = new Percent(51) },
            Solar = new Solar { Peak = new Watts(1600), SunHours = new Hours(4.2m) },
        },
        Circuits = [.. Enumerable.Range(0, Circuits).Select(Circuit)],
    };

    private static Circuit Circuit(int ordinal) => new()
    {
        Ordinal = ordinal,
        Space = new SpaceNumber(ordinal + 1),
        Breaker = new Breaker(new Amperes(20)),
        Loads = [new Load
        {
            Kind = ordinal % 3 == 0 ? LoadKind.Motor : LoadKind.Other,
            Rating = new LoadRating.InWatts(new Watts(480)),
            Start = new Start.Times(ordinal % 3 == 0 ? 6 : 1),
        }],
    };
}
