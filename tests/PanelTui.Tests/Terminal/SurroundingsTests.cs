using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

public class SurroundingsTests
{
    [Theory]
    [InlineData("TERM=xterm-256color", "Cube")]
    [InlineData("TERM=tmux-256color", "Cube")]
    [InlineData("TERM=screen-256color", "Cube")]
    [InlineData("TERM=xterm", "Cube")]
    [InlineData("TERM=screen", "Sixteen")]
    [InlineData("TERM=linux", "Sixteen")]
    [InlineData("TERM=vt100", "None")]
    [InlineData("TERM=xterm-mono", "None")]
    [InlineData("", "None")]
    [InlineData("TERM=xterm-256color COLORTERM=truecolor", "Full")]
    [InlineData("TERM=xterm-direct", "Full")]
    [InlineData("TERM=xterm-256color COLORTERM=truecolor NO_COLOR=1", "None")]
    [InlineData("TERM=xterm-256color NO_COLOR=", "Cube")]
    public void Colours_follow_the_environment(string variables, string depth) =>
        Surroundings.Colours(Environment(variables)).ToString().ShouldBe(depth);

    [Theory]
    [InlineData("LANG=en_US.UTF-8", false)]
    [InlineData("LANG=C.utf8", false)]
    [InlineData("LANG=en_US.UTF-8 LC_ALL=C", true)]
    [InlineData("LANG=C LC_CTYPE=en_US.UTF-8", false)]
    [InlineData("LANG=en_US.ISO-8859-1", true)]
    [InlineData("LC_ALL= LANG=en_US.UTF-8", false)]
    [InlineData("", true)]
    public void The_locale_decides_between_ASCII_and_more(string variables, bool ascii) =>
        Surroundings.IsAscii(Environment(variables)).ShouldBe(ascii);

    [Theory]
    [InlineData("", 50)]
    [InlineData("SSH_CONNECTION=x", 150)]
    [InlineData("SSH_CONNECTION=x PANELTUI_ESCAPE=300", 300)]
    [InlineData("PANELTUI_ESCAPE=soon", 50)]
    [InlineData("PANELTUI_ESCAPE=99999", 50)]
    public void Escape_waits_longer_on_a_line_that_may_cut_a_key(string variables, int milliseconds) =>
        Surroundings.EscapePatience(Environment(variables)).TotalMilliseconds.ShouldBe(milliseconds);

    [Theory]
    [InlineData(true, true, true, "xterm", "The full screen runs on Linux and macOS")]
    [InlineData(false, false, true, "xterm", "The full screen needs a terminal, and the input is not one.")]
    [InlineData(false, true, false, "xterm", "The full screen needs a terminal, and the output is not one.")]
    [InlineData(false, true, true, null, "The full screen needs a terminal, and TERM is not set.")]
    [InlineData(false, true, true, "dumb", "The full screen needs a terminal that can move its cursor, and TERM is 'dumb'.")]
    public void Where_no_screen_can_be_shown_a_sentence_says_why_and_what_works(
        bool windows, bool input, bool output, string? term, string reason)
    {
        var sentence = TerminalCheck.WhyNot(windows, input, output, term);
        sentence.ShouldNotBeNull().ShouldStartWith(reason);
        sentence.ShouldContain("'paneltui check' and 'paneltui calc' work");
    }

    [Fact]
    public void On_a_terminal_nothing_stands_in_the_way() => TerminalCheck.WhyNot(false, true, true, "xterm").ShouldBeNull();

    private static Func<string, string?> Environment(string variables)
    {
        var known = variables.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(pair => pair.Split('='))
            .ToDictionary(pair => pair[0], pair => pair[1]);
        return name => known.GetValueOrDefault(name);
    }
}
