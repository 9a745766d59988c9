namespace PanelTui.Terminal;

/// <summary>Whether a full screen can be shown here, and if not, a sentence that says why and what works instead.</summary>
internal static class TerminalCheck
{
    private const string Instead = "'paneltui check' and 'paneltui calc' work without one.";

    public static string? WhyNot() => OperatingSystem.IsWindows()
        ? WhyNot(isWindows: true, inputIsTerminal: true, outputIsTerminal: true, term: null)
        : WhyNot(
            isWindows: false,
            StandardFile.Input.IsTerminal,
            StandardFile.Output.IsTerminal,
            Environment.GetEnvironmentVariable("TERM"));

    public static string? WhyNot(bool isWindows, bool inputIsTerminal, bool outputIsTerminal, string? term) => term switch
    {
        _ when isWindows => "The full screen runs on Linux and macOS, and on Windows inside WSL; "
            + "'paneltui check' and 'paneltui calc' work here.",
        _ when !inputIsTerminal => $"The full screen needs a terminal, and the input is not one. {Instead}",
        _ when !outputIsTerminal => $"The full screen needs a terminal, and the output is not one. {Instead}",
        null or "" => $"The full screen needs a terminal, and TERM is not set. {Instead}",
        "dumb" or "unknown" => $"The full screen needs a terminal that can move its cursor, and TERM is '{term}'. {Instead}",
        _ => null,
    };
}
