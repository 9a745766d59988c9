using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.CommandLine;

/// <summary>What the program tells a script. 128 + n, ended by signal n, comes from the terminal host.</summary>
internal static class ExitCode
{
    /// <summary>Nothing at error level.</summary>
    public const int Clean = 0;

    /// <summary>One or more errors found.</summary>
    public const int Findings = 1;

    /// <summary>The file cannot be read as a schedule, or the command line is not understood.</summary>
    public const int Unusable = 2;

    /// <summary>For a file that could be assessed, or could not.</summary>
    public static int Of(Assessment? assessment) => assessment switch
    {
        null => Unusable,
        { Findings: var findings } when findings.Any(finding => finding.Severity == Severity.Error) => Findings,
        _ => Clean,
    };
}
