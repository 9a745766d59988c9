using Terminal.Gui.Views;

namespace PanelTui.Tests.Terminal;

/// <summary>The editor itself on a terminal of the system; PANELTUI_EXE names another build of it, such as the native one.</summary>
public sealed class EditorTerminalTests : IDisposable
{
    private const string Schedule = """
        schedule: 1
        panel:
          name: Packing shed standby
          system: 120/240 V 1ph 3W
          spaces: 8
          bus: 100 A
          main: 60 A
        circuits:
          - {space: 1, name: "Sorting lights \u202e\u009b2J", breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}
          - {space: 2, name: Well pump, breaker: 20 A, loads: [{kind: motor, rating: 1/2 hp}]}

        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("paneltui-").FullName;
    private readonly Dictionary<string, string?> _variables;

    public EditorTerminalTests()
    {
        File.WriteAllText(Path.Combine(_folder, "shed.yaml"), Schedule);
        _variables = new()
        {
            ["TERM"] = "xterm-256color", ["LC_ALL"] = "C.UTF-8", ["COLORTERM"] = null, ["NO_COLOR"] = null,
            ["HOME"] = _folder, ["XDG_STATE_HOME"] = Path.Combine(_folder, "state"),
        };
    }

    [Theory]
    [InlineData(1, 129)]
    [InlineData(2, 130)]
    [InlineData(3, 131)]
    [InlineData(15, 143)]
    public void A_signal_leaves_a_clean_terminal(int signal, int exitCode)
    {
        using var terminal = Open();
        terminal.Signal(signal).ExitCode().ShouldBe(exitCode);
        terminal.LeftBehind.ShouldBeEmpty();
        terminal.ModeIsRestored.ShouldBeTrue();
    }

    [Fact]
    public void Quitting_leaves_a_clean_terminal()
    {
        using var terminal = Open();
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        terminal.LeftBehind.ShouldBeEmpty();
        terminal.ModeIsRestored.ShouldBeTrue();
    }

    [Fact]
    public void Escape_does_not_quit()
    {
        using var terminal = Open();
        terminal.Type("\e").IsQuietFor(TimeSpan.FromSeconds(1));
        terminal.Program.HasExited.ShouldBeFalse();
    }

    [Fact]
    public void NO_COLOR_means_no_colour()
    {
        _variables["NO_COLOR"] = "1";
        using var terminal = Open();
        terminal.Sent.ShouldNotMatch(@"\e\[[0-9;]*\b([34]\d|9\d|10\d)[0-9;]*m");
    }

    [Fact]
    public void A_plain_locale_gets_plain_letters()
    {
        _variables["LC_ALL"] = "C";
        using var terminal = Open();
        terminal.Sent.ShouldAllBe(letter => letter < '\u0080');
    }

    [Fact]
    public void Text_of_the_file_never_reaches_the_terminal_raw()
    {
        using var terminal = Open();
        terminal.Sent.ShouldNotContain("\u202e");
        terminal.Sent.ShouldNotContain("\u009b");
    }

    [Fact]
    public void An_idle_editor_sends_nothing()
    {
        using var terminal = Open();
        terminal.IsQuietFor(TimeSpan.FromSeconds(1)).ShouldBeTrue();
    }

    [Fact]
    public void A_key_costs_one_write_of_less_than_400_bytes()
    {
        using var terminal = Open();
        var before = terminal.Vt.Text;
        var (bytes, writes) = terminal.CostOf("\e[B", screen => screen.Cost.Writes > 0);
        bytes.ShouldBeLessThan(400, before);
        writes.ShouldBe(1);
    }

    [Fact]
    public void The_terminal_is_asked_nothing()
    {
        using var terminal = Open();
        foreach (var question in (string[])["\e[c", "\e[>c", "\e[6n", "\e[?6n", "\e[?u", "\e]10;?", "\e]11;?", "\eP", "\e_"])
            terminal.Sent.ShouldNotContain(question);
    }

    [Fact]
    public void A_terminal_that_cannot_move_its_cursor_gets_a_sentence()
    {
        _variables["TERM"] = "dumb";
        using var terminal = Start();
        terminal.ExitCode().ShouldBe(2);
        terminal.Sent.ShouldContain("'paneltui check' and 'paneltui calc' work without one.");
        terminal.Sent.ShouldNotContain("\e");
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private Pty Open()
    {
        var terminal = Start().Until(screen => screen.Modes.Contains("?1049") && screen.Text.Length > 0);
        while (!terminal.IsQuietFor(TimeSpan.FromMilliseconds(200)))
        {
            // the first frames are still coming
        }

        return terminal;
    }

    private Pty Start()
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        Assert.SkipUnless(HasEditor, "the program has no screen yet");
        var given = Environment.GetEnvironmentVariable("PANELTUI_EXE");
        return Pty.Start([given ?? Path.Combine(AppContext.BaseDirectory, "paneltui"), "shed.yaml"], _variables, _folder);
    }

    private static bool HasEditor =>
        typeof(PanelTui.Terminal.TerminalHost).Assembly.GetTypes().Any(type => type.IsSubclassOf(typeof(Runnable)));
}
