using BenchmarkDotNet.Attributes;
using PanelTui.Documents;
using PanelTui.Documents.Text;
using PanelTui.Engine;
using PanelTui.Engine.Panels;

namespace PanelTui.Benchmarks;

/// <summary>How the engine's time grows with the circuits, beyond what the reader lets a file have.</summary>
public class GrowthBenchmarks
{
    private Schedule _schedule = null!;

    [Params(42, 84, 168, 840)]
    public int Circuits { get; set; }

    [GlobalSetup]
    public void Fill()
    {
        var one = Snapshot.Of(SourceText.FromString(RecomputeBenchmarks.Schedule(42))).Schedule!;
        _schedule = one with
        {
            Panel = one.Panel with { Spaces = Circuits },
            Circuits =
            [
                .. Enumerable.Range(0, Circuits).Select(at => one.Circuits[at % 42] with
                {
                    Ordinal = at,
                    Id = $"c{at}",
                    Space = new SpaceNumber(at + 1),
                }),
            ],
        };
    }

    [Benchmark(Description = "assess alone, all rules on")]
    public Assessment Assess() => Assessment.Of(_schedule);
}
