using PanelTui.CommandLine;
using PanelTui.Tests.CommandLine;

namespace PanelTui.Tests.Terminal;

/// <summary>What a command sends to a terminal, byte for byte: its text, and nothing that changes the terminal.</summary>
public sealed class PlainOutputTests : TerminalTests
{
    private const string Broken = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: twenty}\n";

    private const string Few = """
        schedule: 1
        panel: {system: 120/240 V 1ph 3W, spaces: 4}
        circuits:
          - {space: 1, name: Lights, breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}
          - {space: 3, name: Pump, breaker: 15 A, loads: [{kind: motor, rating: 1/3 hp}]}

        """;

    private string Shed => Path.Combine(Folder, "shed.panel.yaml");

    /// <summary>Every verb, its help, and what is refused; also by the editor.</summary>
    private string[][] Lines =>
    [
        ["--help"], ["--version"], ["help"], ["--hlp"], ["chek"], ["check", "--jason", "x"],
        .. Verbs.All.Select(verb => new[] { verb.Name, "--help" }),
        ["check", Shed], ["check", Shed, "--json"], ["check", Folder], ["calc", Shed], ["calc", Shed, "--json"], ["calc", Shed, "--why", "demand"],
        ["run", Shed], ["run", Shed, "--json"], ["balance", Path.Combine(Folder, "few.yaml")], ["transfer", Shed], ["rules"], ["schema"], ["completions", "bash"],
        ["diff", Shed, Path.Combine(Folder, "other.yaml")], ["merge", Shed, Shed, Shed, "-n"], ["git-setup", "--hlp"], ["new", "-"],
        ["print", "directory", Shed], ["print", "directory", Shed, "--format", "pdf"], ["print", "all", Shed, "-o", Path.Combine(Folder, "permit"), "-n"],
        ["check", Path.Combine(Folder, "broken.yaml")], [Path.Combine(Folder, "broken.yaml")], [Path.Combine(Folder, "none.yaml"), "--no-input"], [Folder],
    ];

    public PlainOutputTests()
    {
        File.WriteAllText(Shed, PanelTui.Tests.Shed.Text);
        File.WriteAllText(Path.Combine(Folder, "other.yaml"), PanelTui.Tests.Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal));
        File.WriteAllText(Path.Combine(Folder, "broken.yaml"), Broken);
        File.WriteAllText(Path.Combine(Folder, "few.yaml"), Few);
    }

    [Fact]
    public void Every_command_sends_a_terminal_exactly_its_text()
    {
        var list = Path.Combine(Folder, "lines");
        File.WriteAllLines(list, Lines.Select(line => string.Join('\t', line)));
        using var terminal = Start(Tests, CommandLines.Argument, list);
        terminal.ExitCode().ShouldBe(0, terminal.Sent);
        var sent = terminal.Sent;
        foreach (var (number, line) in Lines.Index())
        {
            var text = CommandLines.Mark(number) + Ran.OnTerminal(line);
            var expected = text.Replace("\n", "\r\n", StringComparison.Ordinal);
            sent[..Math.Min(expected.Length, sent.Length)].ShouldBe(expected, string.Join(' ', line));
            sent = sent[expected.Length..];
        }

        sent.ShouldBeEmpty();
        terminal.ModeIsRestored.ShouldBeTrue();
    }

    /// <summary>The program's own start, and each of its commands with the native build.</summary>
    [Fact]
    public void The_program_itself_sends_nothing_else()
    {
        foreach (var line in RealProgram.Native is null ? [["check", Shed]] : Lines.Where(line => line is not ["--version"]).AtLeastOne()) // it names its own commit
        {
            using var terminal = Start(RealProgram.Path, line);
            terminal.ExitCode();
            terminal.Sent.ShouldBe(Ran.OnTerminal(line).Replace("\n", "\r\n", StringComparison.Ordinal), string.Join(' ', line));
            terminal.ModeIsRestored.ShouldBeTrue();
        }
    }

    [Fact]
    public void A_question_is_text_and_the_terminal_itself_takes_the_answer()
    {
        using var terminal = Start(RealProgram.Path, "new", Path.Combine(Folder, "new.yaml"));
        terminal.Type("\u0004").ExitCode().ShouldBe(2);
        terminal.Sent.ShouldContain("given up; nothing has been written");
        terminal.Sent.ShouldNotContain("\e");
        terminal.ModeIsRestored.ShouldBeTrue();
    }

    private Pty Start(string program, params string[] arguments)
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        return Pty.Start([program, .. arguments], Variables, Folder);
    }
}
