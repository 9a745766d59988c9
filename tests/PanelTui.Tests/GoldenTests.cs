namespace PanelTui.Tests;

public sealed class GoldenTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("paneltui-").FullName;

    [Fact]
    public void A_missing_screen_fails() =>
        Should.Throw<ShouldAssertException>(() => Golden.Compare("a", File("missing"), accept: false))
            .Message.ShouldContain("PANELTUI_ACCEPT=1");

    [Fact]
    public void Another_screen_fails()
    {
        Golden.Compare("a\nb", File("screen"), accept: true);
        Should.Throw<ShouldAssertException>(() => Golden.Compare("a\nc", File("screen"), accept: false));
    }

    [Fact]
    public void The_accepted_screen_passes()
    {
        Golden.Compare("a\nb", File("screen"), accept: true);
        Golden.Compare("a\nb\n", File("screen"), accept: false);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string File(string name) => Path.Combine(_folder, "screens", $"{name}.txt");
}
