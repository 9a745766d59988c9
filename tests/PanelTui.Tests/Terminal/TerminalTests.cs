namespace PanelTui.Tests.Terminal;

/// <summary>A folder of its own, the variables of an ordinary terminal, and a small program to put on one.</summary>
public abstract class TerminalTests : IDisposable
{
    protected string Folder { get; } = Directory.CreateTempSubdirectory("paneltui-").FullName;

    protected Dictionary<string, string?> Variables { get; } = new()
    {
        ["TERM"] = "xterm-256color", ["LC_ALL"] = "C.UTF-8", ["COLORTERM"] = null, ["NO_COLOR"] = null,
        ["SSH_CONNECTION"] = null, ["PANELTUI_DEBUG"] = null,
    };

    /// <summary>What the program wrote down as it ended.</summary>
    protected IReadOnlyList<string> Kept => File.ReadAllLines(Path.Combine(Folder, "kept"));

    protected static string Tests => Path.Combine(AppContext.BaseDirectory, "PanelTui.Tests");

    public void Dispose()
    {
        Dispose(true);
        GC.SuppressFinalize(this);
    }

    protected virtual void Dispose(bool disposing) => Directory.Delete(Folder, recursive: true);

    private protected static string AfterTheScreen(Pty terminal) =>
        terminal.Sent[(terminal.Sent.LastIndexOf("\e[?1049l", StringComparison.Ordinal) + 8)..];

    private protected static void ShouldBeClean(Pty terminal)
    {
        terminal.LeftBehind.ShouldBeEmpty();
        terminal.ModeIsRestored.ShouldBeTrue("the line is left in raw mode");
    }

    private protected Pty Open(string option = "") => Start(option).Until(screen => screen.Row(23) == "bottom");

    private protected Pty Start(string option = "")
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        return Pty.Start([Tests, EntryPoint.ProbeArgument, Path.Combine(Folder, "kept"), option], Variables, Folder);
    }
}
