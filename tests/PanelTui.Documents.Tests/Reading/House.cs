namespace PanelTui.Documents.Tests.Reading;

/// <summary>The case files that lie beside the tests, found from wherever the tests run.</summary>
internal static class House
{
    public static string Root { get; } = Up(AppContext.BaseDirectory);

    public static string Cases(string folder) => Path.Combine(Root, "tests", "Cases", folder);

    public static string Case(string folder, string name) => File.ReadAllText(Path.Combine(Cases(folder), name));

    /// <summary>The cases of a folder, without `.yaml`, in order.</summary>
    public static IEnumerable<string> NamesOf(string folder) => Directory.GetFiles(Cases(folder), "*.yaml")
        .Select(path => Path.GetFileNameWithoutExtension(path))
        .Order(StringComparer.Ordinal);

    private static string Up(string folder) => File.Exists(Path.Combine(folder, "PanelTui.sln"))
        ? folder
        : Up(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("PanelTui.sln is nowhere above."));
}
