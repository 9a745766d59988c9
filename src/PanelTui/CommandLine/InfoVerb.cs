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
    /// <summary>The number that stands under `schedule` in a file.</summary>
    private const int FileFormat = 1;

    private static readonly string[] Variables =
        ["TERM", "COLORTERM", "NO_COLOR", "LC_ALL", "LC_CTYPE", "LANG", "SSH_CONNECTION", "XDG_STATE_HOME",
        CommandLineRoot.LookVariable, Surroundings.EscapeVariable];

    public override string Name => "info";

    public override string Summary => "version, folders, and what the terminal is taken for";

    public override string Page => """
        Print the version, the folders the program uses, the limits of what it knows,
        and what it was told about the terminal: what to add to a report of a fault.

        Usage:
          paneltui info [--json]

        Examples:
          paneltui info

        Exit code: 0.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var json = JsonOption();
        command.Add(json);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(json)) streams.Out.WriteLine(Json(Environment.GetEnvironmentVariable));
            else foreach (var line in Lines(Environment.GetEnvironmentVariable)) streams.Out.WriteLine(DisplayText.Clean(line));
            return ExitCode.Clean;
        });
    }

    private const string NoFolder = "nowhere: there is no home folder, and XDG_STATE_HOME is not set to an absolute path";

    private static string SystemName => $"{RuntimeInformation.OSDescription}, {RuntimeInformation.ProcessArchitecture}";

    private static string? Recovery => Kept(state => state.RecoveryFolder());

    private static string? Places => Kept(state => state.PlacesFolder());

    /// <summary>Null where there is no folder to keep things in.</summary>
    private static string? Kept(Func<StateFolder, string> folder)
    {
        try
        {
            return folder(StateFolder.OfUser);
        }
        catch (FileProblem)
        {
            return null;
        }
    }

    private static IEnumerable<string> Lines(Func<string, string?> variable) =>
    [
        $"paneltui {CommandLineRoot.Version}, MIT licence",
        $"system         {SystemName}",
        $"file format    schedule: {FileFormat}; code editions {string.Join(", ", Editions)}",
        $"JSON outputs   {string.Join(", ", JsonOutput.All.Select(output => $"{output.Name} {output.Version}"))}",
        $"unsaved work   {Recovery ?? NoFolder}",
        $"last places    {Places ?? NoFolder}",
        "settings       none are kept; the command line and the variables below say everything",
        $"colours        {Surroundings.Colours(variable).Word}",
        $"letters        {(Surroundings.IsAscii(variable) ? "ASCII" : "UTF-8")}",
        $"escape waits   {Surroundings.EscapePatience(variable).TotalMilliseconds:0} ms",
        .. Variables.Select(name => $"{name,-14} {variable(name) ?? "(not set)"}"),
    ];

    private static IEnumerable<int> Editions => Enum.GetValues<CodeEdition>().Select(edition => edition.Year);

    private static string Json(Func<string, string?> variable) => JsonOutput.Info.Of(json =>
    {
        json.WriteString("version", CommandLineRoot.Version);
        json.WriteString("commit", CommandLineRoot.Commit);
        json.WriteString("system", SystemName);
        json.WriteNumber("file_format", FileFormat);
        json.WriteStartArray("code_editions");
        foreach (var edition in Editions) json.WriteNumberValue(edition);
        json.WriteEndArray();
        json.WriteStartObject("json_outputs");
        foreach (var output in JsonOutput.All) json.WriteNumber(output.Name, output.Version);
        json.WriteEndObject();
        json.WriteString("recovery_folder", Recovery);
        json.WriteString("places_folder", Places);
        json.WriteString("colors", Surroundings.Colours(variable).Word);
        json.WriteBoolean("ascii", Surroundings.IsAscii(variable));
        json.WriteNumber("escape_wait_ms", (int)Surroundings.EscapePatience(variable).TotalMilliseconds);
        json.WriteStartObject("variables");
        foreach (var name in Variables) json.WriteString(name, variable(name));
        json.WriteEndObject();
    });
}
