using PanelTui.Engine;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;

namespace PanelTui.Sheets;

/// <summary>What a sheet says of a schedule that breaks rules: nobody is to build or switch by it unwarned.</summary>
internal static class OpenErrors
{
    /// <summary>Nothing where no finding at error level is open.</summary>
    public static string? Of(Assessment assessment) => assessment.Findings.Count(finding => finding.Severity == Severity.Error) switch
    {
        0 => null,
        1 => "NOT SETTLED: 1 finding at error level is open. See paneltui check before anything is built or switched by this sheet.",
        var many => $"NOT SETTLED: {Shown.Exactly(many)} findings at error level are open. See paneltui check before anything is built or switched by this sheet.",
    };
}
