using System.Text;
using BenchmarkDotNet.Attributes;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Text;
using PanelTui.Engine;
using PanelTui.Engine.Panels;

namespace PanelTui.Benchmarks;

/// <summary>What one edit costs: the splice with its guard, the reading, and everything that follows for the panel.</summary>
[MemoryDiagnoser]
public class RecomputeBenchmarks
{
    private SourceText _source = null!;
    private Snapshot _snapshot = null!;

    /// <summary>A full panel of so many spaces, one circuit in each.</summary>
    [Params(42, 84, 168, 252)]
    public int Spaces { get; set; }

    [GlobalSetup]
    public void Fill()
    {
        _source = SourceText.FromString(Schedule(Spaces));
        _snapshot = Snapshot.Of(_source);
    }

    [Benchmark(Description = "move a breaker: splice, guard, read, assess")]
    public Intended Edit() => MoveCircuits.In(_snapshot, [new Hop(0, new SpaceNumber(3))]);

    [Benchmark(Description = "read and assess the whole text")]
    public Snapshot ReadAndAssess() => Snapshot.Of(_source);

    [Benchmark(Description = "assess alone, all rules on")]
    public Assessment Assess() => Assessment.Of(_snapshot.Schedule!);

    internal static string Schedule(int spaces)
    {
        var text = new StringBuilder($$"""
            schedule: 1
            panel: {name: Full panel, system: 120/240 V 1ph 3W, spaces: {{spaces}}, bus: 225 A, main: 200 A}
            demand: {method: non-dwelling}
            feeder: {ocpd: 200 A}
            transfer: {rating: 200 A}
            source: {kind: generator, continuous: 48 kW, ocpd: 200 A}
            circuits:

            """);
        for (var space = 1; space <= spaces; space++)
        {
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $$"""
                  - id: c{{space}}
                    space: {{space}}
                    name: Circuit number {{space}}
                    breaker: 20 A
                    loads:
                      - {kind: {{(space % 3 == 0 ? "motor, rating: 1/2 hp" : space % 3 == 1 ? "lighting, rating: 480 W, continuous: yes" : "receptacle, outlets: 4")}}}

                """);
        }

        return text.Append("scenarios: [{name: All, running: all}]\n").ToString();
    }
}
