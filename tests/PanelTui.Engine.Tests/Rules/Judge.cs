using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>What one rule says of a schedule.</summary>
internal static class Judge
{
    public static IEnumerable<Finding> Findings(Schedule schedule, string rule) =>
        schedule.Assessed().Findings.Where(finding => finding.Rule == rule);

    public static void ShouldPass(this Schedule schedule, string rule) => Findings(schedule, rule).ShouldBeEmpty();

    /// <summary>The one finding of a rule, as people read it.</summary>
    public static void ShouldBreak(this Schedule schedule, string rule, string message)
    {
        var finding = Findings(schedule, rule).ShouldHaveSingleItem();
        finding.Message.ShouldBe(message);
        $"{finding.Message} {finding.Mend}".ShouldNotContain("safe", Case.Insensitive);
        finding.Mend.ShouldNotBeEmpty();
    }
}
