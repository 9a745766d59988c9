using PanelTui.Documents.Tests.Reading;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Demand;

/// <summary>
/// A file of tests/Cases/demand: what a source says and a schedule that says the same, in turn, parted by `---`.
/// </summary>
/// <remarks>The first part also says where it comes from: case, source, edition, and the mark of its figures.</remarks>
internal sealed class DemandCase
{
    private readonly YamlNode[] _expected;
    private readonly string[] _schedules;

    public DemandCase(string name)
    {
        var parts = House.Case("demand", $"{name}.yaml").Split("\n---\n");
        _expected = [.. parts.Where((_, index) => index % 2 == 0).Select(RootOf)];
        _schedules = [.. parts.Where((_, index) => index % 2 == 1)];
    }

    /// <summary>The numbers of the worked examples in it.</summary>
    public IEnumerable<string> Ids => Head("case").Split(' ');

    public IEnumerable<DemandTrial> Trials =>
        _schedules.Select((schedule, index) => new DemandTrial(_expected[index], Reading.Schedules.Snapshot(schedule)));

    public bool IsPaired => _schedules.Length == _expected.Length;

    public static IEnumerable<string> Names => House.NamesOf("demand");

    /// <summary>A line of the first part; empty where there is none.</summary>
    public string Head(string key) => _expected[0].ValueOf(key)?.Value ?? "";

    private static YamlNode RootOf(string text) =>
        YamlTree.Parse(SourceText.FromString(text)).Root.ShouldNotBeNull();
}
