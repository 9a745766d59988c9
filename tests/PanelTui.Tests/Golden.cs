namespace PanelTui.Tests;

/// <summary>Screens as they should be, one text file each, in tests/Cases/screens.</summary>
/// <remarks>A missing file fails. With PANELTUI_ACCEPT=1 the screens are written instead: read them before you keep them.</remarks>
public static class Golden
{
    internal static bool IsAccepting => Environment.GetEnvironmentVariable("PANELTUI_ACCEPT") == "1";

    /// <param name="actual">The screen, row by row.</param>
    /// <param name="name">The name of the file, without .txt.</param>
    public static void ShouldMatch(string actual, string name) =>
        Compare(actual, Path.Combine(SourceTree.Root, "tests", "Cases", "screens", $"{name}.txt"), IsAccepting);

    internal static void Compare(string actual, string file, bool accept)
    {
        ArgumentNullException.ThrowIfNull(actual);
        var screen = actual.ReplaceLineEndings("\n").TrimEnd() + "\n";
        if (accept)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, screen);
            return;
        }

        File.Exists(file).ShouldBeTrue($"there is no {Path.GetFileName(file)}; PANELTUI_ACCEPT=1 writes it. The screen:\n{screen}");
        screen.ShouldBe(File.ReadAllText(file).ReplaceLineEndings("\n"), $"{Path.GetFileName(file)} shows another screen");
    }
}
