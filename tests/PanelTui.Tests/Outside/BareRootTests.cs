using PanelTui.Tests.Saving;
using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Outside;

/// <summary>
/// The native build in a root file system that holds the program, the libraries it is linked to, and a schedule: no list of users, no
/// devices, no OpenSSL, no time zones. Runs as root with PANELTUI_EXE and PANELTUI_BARE=1.
/// </summary>
public sealed class BareRootTests : TerminalTests
{
    private const string Chroot = "/usr/sbin/chroot";

    [Theory]
    [InlineData(0, "check", "/w/shed.panel.yaml")]
    [InlineData(0, "calc", "/w/shed.panel.yaml", "--json")]
    [InlineData(0, "balance", "/w/shed.panel.yaml")]
    [InlineData(0, "run", "/w/shed.panel.yaml")]
    [InlineData(0, "transfer", "/w/shed.panel.yaml")]
    [InlineData(1, "diff", "/w/shed.panel.yaml", "/w/other.panel.yaml")]
    [InlineData(0, "print", "directory", "/w/shed.panel.yaml", "-o", "/w/directory.pdf")]
    [InlineData(0, "print", "diagram", "/w/shed.panel.yaml", "-o", "/w/diagram.svg")]
    [InlineData(0, "merge", "/w/shed.panel.yaml", "/w/shed.panel.yaml", "/w/other.panel.yaml")]
    [InlineData(0, "new", "/w/new.panel.yaml", "--no-input")]
    public void A_command_works(int exitCode, params string[] arguments)
    {
        MakeRoot();
        var ran = Finished.Of(Chroot, [Folder, "/paneltui", .. arguments]);
        ran.Error.ShouldBeEmpty();
        ran.Code.ShouldBe(exitCode);
    }

    [Fact]
    public void A_pdf_has_the_bytes_of_the_managed_build()
    {
        MakeRoot();
        Finished.Of(Chroot, Folder, "/paneltui", "print", "directory", "/w/shed.panel.yaml", "-o", "/w/native.pdf").Code.ShouldBe(0);
        var here = Path.Combine(Folder, "w");
        var managed = Path.Combine(AppContext.BaseDirectory, "paneltui");
        Finished.Of(managed, "print", "directory", Path.Combine(here, "shed.panel.yaml"), "-o", Path.Combine(here, "managed.pdf")).Code.ShouldBe(0);
        File.ReadAllBytes(Path.Combine(here, "native.pdf")).ShouldBe(File.ReadAllBytes(Path.Combine(here, "managed.pdf")));
    }

    [Fact]
    public void The_editor_opens_edits_saves_and_ends()
    {
        MakeRoot();
        foreach (var name in (string[])["HOME", "XDG_STATE_HOME"]) Variables[name] = "/w";
        using var terminal = Pty.Start([Chroot, Folder, "/paneltui", "/w/shed.panel.yaml"], Variables, Folder);
        terminal.Until(screen => screen.Text.Contains("Well pump", StringComparison.Ordinal));
        terminal.Type("d").Until(screen => screen.Text.Contains("· changed", StringComparison.Ordinal));
        terminal.Type("\u0013").Until(screen => screen.Text.Contains("Saved", StringComparison.Ordinal));
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        ShouldBeClean(terminal);
        File.ReadAllText(Path.Combine(Folder, "w", "shed.panel.yaml")).ShouldNotContain("Shed lights");
    }

    private void MakeRoot()
    {
        Assert.SkipWhen(Environment.GetEnvironmentVariable("PANELTUI_BARE") is null, "needs PANELTUI_BARE");
        var program = RealProgram.Native.ShouldNotBeNull("PANELTUI_EXE names no native build");
        Directory.CreateDirectory(Path.Combine(Folder, "w"));
        File.Copy(program, Path.Combine(Folder, "paneltui"));
        var libraries = Finished.Of("/usr/bin/ldd", program).Out.Split([' ', '\n', '\t']).Where(word => word.StartsWith('/')).ToList();
        libraries.ShouldNotBeEmpty();
        foreach (var library in libraries)
        {
            var inside = Path.Join(Folder, library);
            Directory.CreateDirectory(Path.GetDirectoryName(inside)!);
            File.Copy(library, inside);
        }

        File.WriteAllText(Path.Combine(Folder, "w", "shed.panel.yaml"), Shed.Text);
        File.WriteAllText(Path.Combine(Folder, "w", "other.panel.yaml"), Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal));
    }
}
