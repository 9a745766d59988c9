using System.CommandLine;
using PanelTui.Documents.Reading;
using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.CommandLine;

/// <summary>The option `--severity`: the least severe thing that is shown. What is not shown still counts for the exit code.</summary>
internal static class SeverityFilter
{
    public static Option<string> Option()
    {
        var option = new Option<string>("--severity") { Description = "error, warning or note", DefaultValueFactory = _ => "note" };
        option.AcceptOnlyFromAmong("error", "warning", "note");
        return option;
    }

    public static Severity Of(string word) => word switch
    {
        "error" => Severity.Error,
        "warning" => Severity.Warning,
        _ => Severity.Note,
    };

    public static bool Shows(Severity lowest, Severity severity) => Rank(severity) >= Rank(lowest);

    public static bool Shows(Severity lowest, Diagnostic diagnostic) => Shows(lowest, diagnostic.IsError ? Severity.Error : Severity.Note);

    private static int Rank(Severity severity) => severity switch
    {
        Severity.Note => 0,
        Severity.Warning => 1,
        Severity.Error => 2,
        _ => throw Unnamed.Of(severity),
    };
}
