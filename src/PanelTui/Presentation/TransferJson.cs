using PanelTui.Engine;
using PanelTui.Engine.Running.Switching;

namespace PanelTui.Presentation;

/// <summary>Going to standby and back as JSON: the lines of the page, each list under a key of its own.</summary>
internal static class TransferJson
{
    public static string Of(Assessment assessment) => JsonOutput.Transfer.Of(json =>
    {
        var plan = SwitchingPlan.Of(assessment);
        json.WriteString("panel", assessment.Schedule.Panel.Name);
        json.WriteBoolean("off_grid", plan.IsAlone);
        json.WriteStrings("stops", plan.Stops);
        json.WriteStrings("never", plan.Never);
        json.WriteStrings("leave_off", plan.LeaveOff);
        json.WriteStrings("connect_cable", plan.Cable.Select(step => step.Words));
        json.WriteStrings("to_standby", plan.ToStandby.Select(step => step.Words));
        json.WriteStrings("back", plan.Back.Select(step => step.Words));
        json.WriteStrings("disconnect_cable", plan.Apart.Select(step => step.Words));
    });
}
