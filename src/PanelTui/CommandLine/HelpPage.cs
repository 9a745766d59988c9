using System.CommandLine.Invocation;
using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>Prints one page of help on standard output.</summary>
internal sealed class HelpPage(string page, TextWriter output) : SynchronousCommandLineAction
{
    public const string PlaceOfVerbs = "{verbs}";

    public const string Root = """
        PanelTui: the schedule of a standby-fed subpanel, in a terminal.

        Usage:
          paneltui FILE                  open the schedule in the editor
          paneltui COMMAND [options]

        Examples:
          paneltui new shed.panel.yaml           write a commented schedule to start from
          paneltui shed.panel.yaml               open it: the face of the panel, live figures
          paneltui check shed.panel.yaml         what is wrong with it, line by line
          paneltui calc shed.panel.yaml --json   legs, neutral, demand, ratings as JSON

        Commands:
        {verbs}

        Options:
          --ascii          draw with ASCII characters alone
          --look NAME      standard, contrast or plain; PANELTUI_LOOK says it for good
          -h, --help       this page; `paneltui COMMAND --help` for a command's own
          --version        the program's version

        Without a terminal, check, calc and new work; - as FILE reads standard input.
        Exit codes: 0 nothing at error level, 1 errors found, 2 file or command line not
        usable, 70 a fault of this program, 128+n ended by signal n.

        This program does not replace the code in force, the authority having jurisdiction
        or licensed practice. Never connect two supplies; work de-energised.
        """;

    public override int Invoke(ParseResult parseResult)
    {
        output.WriteLine(page);
        return ExitCode.Clean;
    }
}
