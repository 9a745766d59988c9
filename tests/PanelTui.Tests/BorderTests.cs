using System.Reflection;

namespace PanelTui.Tests;

/// <summary>Dependencies point one way: PanelTui, then Documents, then Engine, then nothing.</summary>
public class BorderTests
{
    [Fact]
    public void The_engine_knows_no_package_no_file_and_no_screen() =>
        References("PanelTui.Engine").AtLeastOne().ShouldAllBe(name => name.StartsWith("System.", StringComparison.Ordinal));

    [Fact]
    public void Documents_know_the_engine_and_no_screen() =>
        References("PanelTui.Documents").Where(name => !name.StartsWith("System.", StringComparison.Ordinal))
            .ShouldBeSubsetOf(["PanelTui.Engine", "YamlDotNet", "UnitsNet"]);

    private static IEnumerable<string> References(string assembly) =>
        Assembly.Load(assembly).GetReferencedAssemblies().Select(name => name.Name!);
}
