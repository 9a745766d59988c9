namespace PanelTui.Tests;

/// <summary>Where the sources stand, found by walking up from the tests to the solution.</summary>
internal static class Repository
{
    public static string Root { get; } = Find(new DirectoryInfo(AppContext.BaseDirectory));

    private static string Find(DirectoryInfo? folder) => folder switch
    {
        null => throw new InvalidOperationException("The tests do not run inside the repository."),
        _ when File.Exists(Path.Combine(folder.FullName, "PanelTui.sln")) => folder.FullName,
        _ => Find(folder.Parent),
    };
}
