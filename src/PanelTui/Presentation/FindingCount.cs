using PanelTui.Documents;
using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>How many findings of each severity there are.</summary>
internal readonly record struct FindingCount(int Errors, int Warnings, int Notes, int Accepted = 0)
{
    public static FindingCount Of(Assessment assessment) =>
        Of(assessment.Findings) with { Accepted = assessment.Accepted.Length };

    /// <summary>With what is noted of the file itself, a mistyped key for one.</summary>
    public static FindingCount Of(Snapshot snapshot)
    {
        var count = Of(snapshot.Assessment!);
        return count with { Notes = count.Notes + snapshot.Diagnostics.Length };
    }

    public static FindingCount Of(IReadOnlyCollection<Finding> findings) => new(
        findings.Count(finding => finding.Severity == Severity.Error),
        findings.Count(finding => finding.Severity == Severity.Warning),
        findings.Count(finding => finding.Severity == Severity.Note));

    public override string ToString() => Accepted == 0 ? Open : $"{Open}; {Accepted} accepted";

    private string Open => Errors + Warnings + Notes == 0
        ? "none"
        : $"{Counted(Errors, "error")}, {Counted(Warnings, "warning")}, {Counted(Notes, "note")}";

    private static string Counted(int count, string word) => $"{count} {word}{(count == 1 ? "" : "s")}";
}
