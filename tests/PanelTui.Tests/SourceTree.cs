namespace PanelTui.Tests;

/// <summary>The repository the tests were built in.</summary>
internal static class SourceTree
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    /// <summary>The C# files under a folder of the repository, without what a build puts there.</summary>
    public static IEnumerable<string> Files(string folder) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*.cs", SearchOption.AllDirectories)
            .Where(file => !Path.GetRelativePath(Root, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    private static string Find(DirectoryInfo? folder) => folder switch
    {
        null => throw new DirectoryNotFoundException("PanelTui.sln is in no folder above the tests."),
        _ when File.Exists(Path.Combine(folder.FullName, "PanelTui.sln")) => folder.FullName,
        _ => Find(folder.Parent),
    };
}
