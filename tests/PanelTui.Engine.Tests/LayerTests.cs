using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace PanelTui.Engine.Tests;

/// <summary>Inside the engine, too, dependencies point one way.</summary>
public partial class LayerTests
{
    /// <summary>Each folder, and the folders that it may know besides its own.</summary>
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["Quantities"] = [],
        ["Codes"] = ["Quantities"],
        ["Panels"] = ["Quantities", "Codes"],
        ["Derivations"] = ["Quantities", "Codes", "Panels"],
        ["Loads"] = ["Quantities", "Codes", "Panels", "Derivations"],
        ["Demand"] = ["Quantities", "Codes", "Panels", "Derivations", "Loads"],
        ["Sizing"] = ["Quantities", "Codes", "Panels", "Derivations", "Loads", "Demand", "Running"],
        ["Running"] = ["Quantities", "Codes", "Panels", "Derivations", "Loads"],
        ["Rules"] = ["Quantities", "Codes", "Panels", "Derivations", "Loads", "Demand", "Sizing", "Running"],
        ["Balance"] = ["Quantities", "Codes", "Panels", "Derivations", "Loads", "Demand", "Sizing", "Running"],
    };

    [Fact]
    public void Every_folder_has_its_place_in_the_order() =>
        Directory.GetDirectories(Engine()).Select(Path.GetFileName)
            .Where(folder => folder is not "bin" and not "obj")
            .ShouldBeSubsetOf(MayKnow.Keys);

    [Fact]
    public void No_folder_knows_one_that_builds_on_it()
    {
        foreach (var (folder, known) in MayKnow)
            Known(folder).ShouldBeSubsetOf([.. known, folder], $"{folder} knows too much");
    }

    /// <summary>An unneeded using does not build, so the usings are what a folder knows.</summary>
    private static IEnumerable<string> Known(string folder)
    {
        var path = Path.Combine(Engine(), folder);
        return Directory.Exists(path)
            ? Directory.GetFiles(path, "*.cs", SearchOption.AllDirectories)
                .SelectMany(file => Using().Matches(File.ReadAllText(file)))
                .Select(match => match.Groups[1].Value)
                .Distinct()
            : [];
    }

    private static string Engine([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "src", "PanelTui.Engine");

    [GeneratedRegex(@"(?<!namespace )PanelTui\.Engine\.(\w+)")]
    private static partial Regex Using();
}
