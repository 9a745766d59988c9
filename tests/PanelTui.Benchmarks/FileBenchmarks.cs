using BenchmarkDotNet.Attributes;
using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Benchmarks;

/// <summary>Opening, editing and saving a file of so many circuits, three lines and a comment each; far more than a schedule may have.</summary>
public class FileBenchmarks
{
    private string _path = null!;
    private LoadedFile _file = null!;
    private YamlTree _tree = null!;
    private YamlPath _breaker = null!;

    [Params(84, 20_000)]
    public int Circuits { get; set; }

    [GlobalSetup]
    public void Fill()
    {
        var circuits = string.Concat(Enumerable.Range(0, Circuits)
            .Select(at => $"  - space: {(at % 84) + 1}\n    name: Circuit number {at}\n    breaker: 20 A   # note {at}\n"));
        _path = Path.Combine(Path.GetTempPath(), $"paneltui-{Circuits}-{Environment.ProcessId}.panel.yaml");
        File.WriteAllText(_path, $"schedule: 1\npanel: {{system: 120/240 V 1ph 3W, spaces: 84}}\ncircuits:\n{circuits}");
        _file = ScheduleFile.Load(_path);
        _tree = YamlTree.Parse(_file.Source);
        _breaker = YamlPath.Of("circuits", Circuits / 2, "breaker");
    }

    [GlobalCleanup]
    public void Remove() => File.Delete(_path);

    [Benchmark(Description = "open: read, tree, schedule, figures")]
    public Snapshot Open() => Snapshot.Of(ScheduleFile.Load(_path).Source);

    [Benchmark(Description = "edit one field: the change and its proof")]
    public string Edit() => YamlEditor.SetScalar(_tree, _breaker, new NewScalar("25 A", ScalarKind.Text)).ApplyTo(_file.Source.Text);

    [Benchmark(Description = "save, on the disk")]
    public SavedFile Save() => ScheduleFile.Save(_path, _file.Source, ScheduleFile.Look(_path));
}
