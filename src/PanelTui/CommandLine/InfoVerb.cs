using System.CommandLine;
using System.Runtime.InteropServices;
using PanelTui.Documents.Files;
using PanelTui.Engine.Codes;
using PanelTui.Presentation;
using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>`paneltui info`: the version, where the program keeps what, and what it was told about the terminal.</summary>
internal sealed class InfoVerb : Verb
{
    private static readonly string[] Variables =
        ["TERM", "COLORTERM", "NO_COLOR", "LC_ALL", "LC_CTYPE", "LANG", "SSH_CONNECTION", "XDG_STATE_HOME",
        CommandLineRoot.LookVariable, Surroundings.EscapeVariable];

    public override string Name => "info";

    public override string Summary => "version, folders, and what the terminal is taken for";

    public override string Page => """
        Print the version, the folders the program uses, the limits of what it knows,
        and what it was told about the terminal: what to add to a report of a fault.

        Usage:
          paneltui info

        Examples:
          paneltui info

        Exit code: 0.
        """;

    protected override void Describe(Command command, Streams streams) => command.SetAction(_ =>
    {
        foreach (var line in Lines(Environment.GetEnvironmentVariable)) streams.Out.WriteLine(DisplayText.Clean(line));
    });

    private static string Kept(Func<StateFolder, string> folder)
    {
        try
        {
            return folder(StateFolder.OfUser);
        }
        catch (FileProblem)
        {
            return "nowhere: there is no home folder, and XDG_STATE_HOME is not set to an absolute path";
        }
    }

    private static IEnumerable<string> Lines(Func<string, string?> variable) =>
    [
        $"paneltui {CommandLineRoot.Version}, MIT licence",
        $"system         {RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}",
        $"file format    schedule: 1; calc --json schema 1; code editions {string.Join(", ", Enum.GetValues<CodeEdition>().Select(edition => edition.Word))}",
        $"unsaved work   {Kept(state => state.RecoveryFolder())}",
        $"last places    {Kept(state => state.PlacesFolder())}",
        "settings       none are kept; the command line and the variables below say everything",
        $"colours        {Surroundings.Colours(variable).Word}",
        $"letters        {(Surroundings.IsAscii(variable) ? "ASCII" : "UTF-8")}",
        $"escape waits   {Surroundings.EscapePatience(variable).TotalMilliseconds:0} ms",
        .. Variables.Select(name => $"{name,-14} {variable(name) ?? "(not set)"}"),
    ];
}
