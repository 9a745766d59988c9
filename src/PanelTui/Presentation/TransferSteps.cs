using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Switching;

namespace PanelTui.Presentation;

/// <summary>Going to standby and back with this panel's equipment, as a page to print: 78 columns.</summary>
internal static class TransferSteps
{
    private const int Columns = 78;

    public static IEnumerable<string> Of(Assessment assessment)
    {
        var plan = SwitchingPlan.Of(assessment);
        return
        [
            DisplayText.Clean($"{assessment.Schedule.Panel.Name}: {(plan.IsAlone ? "starting the source and shutting it down" : "going to standby and back")}"),
            .. Wrapped.Of("The instructions of the equipment and local rules go before this page. If they differ, follow them.", Columns),
            .. Listed("BEFORE ANYTHING ELSE", plan.Stops),
            .. Listed("NEVER", plan.Never),
            .. Listed(plan.IsAlone ? "LEAVE OFF" : "LEAVE OFF ON STANDBY", plan.LeaveOff),
            .. Numbered("CONNECTING THE CABLE", plan.Cable),
            .. Numbered(plan.IsAlone ? "STARTING THE SOURCE" : "TO STANDBY", plan.ToStandby),
            .. Numbered(plan.IsAlone ? "SHUTTING IT DOWN" : "BACK TO THE GRID", plan.Back),
            .. Numbered("TAKING THE CABLE APART", plan.Apart),
            "",
            .. Wrapped.Of("Not written by the maker of any of this equipment. Keep beside the panel and try it once with someone who knows it.", Columns),
        ];
    }

    private static IEnumerable<string> Listed(string title, ImmutableArray<string> lines) =>
        Part(title, lines.Select(line => ("-", line)));

    private static IEnumerable<string> Numbered(string title, ImmutableArray<SwitchingStep> steps) =>
        Part(title, steps.Select((step, index) => ($"{Shown.Exactly(index + 1)}.", step.Words)));

    /// <summary>A part without lines is left out.</summary>
    private static IEnumerable<string> Part(string title, IEnumerable<(string Mark, string Line)> lines)
    {
        string[] rows = [.. lines.SelectMany(line => Hung(line.Mark, line.Line))];
        return rows.Length == 0 ? [] : ["", title, .. rows];
    }

    private static IEnumerable<string> Hung(string mark, string line) =>
        Wrapped.Of(DisplayText.Clean(line), Columns - 4).Select((row, index) => $"{(index == 0 ? mark : ""),-3} {row}");
}
