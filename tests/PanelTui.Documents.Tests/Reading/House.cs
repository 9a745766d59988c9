namespace PanelTui.Documents.Tests.Reading;

/// <summary>The case files that lie beside the tests, found from wherever the tests run.</summary>
internal static class House
{
    public static string Root { get; } = Up(AppContext.BaseDirectory);

    public static string Cases(string folder) => Path.Combine(Root, "tests", "Cases", folder);

    public static string Case(string folder, string name) => File.ReadAllText(Path.Combine(Cases(folder), name));

    private static string Up(string folder) => File.Exists(Path.Combine(folder, "PanelTui.sln"))
        ? folder
        : Up(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("PanelTui.sln is nowhere above the tests."));
}
