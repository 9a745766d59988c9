namespace PanelTui.Tests;

/// <summary>Borders inside the program that the compiler does not keep; read from the sources.</summary>
public class BoundaryTests
{
    [Fact]
    public void Only_the_terminal_folder_reaches_inside_the_library() =>
        SourceTree.Files("src").Where(file => Contains(file, "UnsafeAccessor"))
            .AtLeastOne().ShouldAllBe(file => Folder(file) == "src/PanelTui/Terminal");

    [Fact]
    public void The_terminal_folder_does_reach_inside() =>
        SourceTree.Files("src/PanelTui/Terminal").ShouldContain(file => Contains(file, "UnsafeAccessor"));

    [Fact]
    public void Presentation_knows_no_screen() =>
        SourceTree.Files("src/PanelTui/Presentation").AtLeastOne().ShouldAllBe(file => !Contains(file, "Terminal.Gui") && !Contains(file, "PanelTui.Terminal"));

    [Fact]
    public void The_library_is_started_in_one_place_only() =>
        SourceTree.Files("src").Where(file => Contains(file, "Application.Create") || Contains(file, "NewApplication("))
            .Select(Folder).Distinct().ShouldBe(["src/PanelTui/Terminal"]);

    private static bool Contains(string file, string word) =>
        File.ReadAllText(file).Contains(word, StringComparison.Ordinal);

    private static string Folder(string file) =>
        Path.GetRelativePath(SourceTree.Root, Path.GetDirectoryName(file)!).Replace('\\', '/');
}
