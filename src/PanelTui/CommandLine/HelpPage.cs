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
          paneltui [FILE]                open it in the editor; else choose one here
          paneltui COMMAND [options]

        Examples:
          paneltui new shed.panel.yaml           write a schedule to start from
          paneltui shed.panel.yaml               open it: the panel, live figures
          paneltui check shed.panel.yaml         what is wrong, line by line
          paneltui calc shed.panel.yaml --json   legs, demand, ratings as JSON

        {verbs}

        Options:
          --ascii          draw with ASCII characters alone
          --look NAME      standard, contrast or plain; PANELTUI_LOOK says it for good
          --no-input       ask no question, also on a terminal
          -h, --help       this page; `paneltui COMMAND --help` for a command's own
          -V, --version    the program's version

        Options of a command stand after it. FILE may be - for standard input where a
        command only reads; -- ends options. Commands that write take -n, --dry-run:
        say what would be written, and write nothing.
        Exit codes: 0 clean, 1 errors or differences found, 2 file or command line not
        usable, 70 a fault of this program, 128+n ended by signal n.

        No substitute for the code in force, the authority having jurisdiction or
        licensed practice. Never connect two supplies; work de-energised.
        More: `paneltui help COMMAND`, `paneltui info`; README.md and docs/.
        """;

    public override int Invoke(ParseResult parseResult)
    {
        output.WriteLine(page);
        return ExitCode.Clean;
    }
}
