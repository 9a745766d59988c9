using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>The optional calculation is for the whole of a dwelling on three wires of 100 A or more.</summary>
public sealed class OptionalMethodOutOfPlaceRule : CodeRule
{
    public override string Name => "optional-method-out-of-place";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "The optional calculation is used for a dwelling on one set of three wires of 100 A or more.";

    public override string Why =>
        "Its factors were found on whole dwellings; on a part of one they make the load too small.";

    public override string Advice =>
        "Check whether this panel carries the whole dwelling; dwelling-standard or selected fits a part of it.";

    public override CodeSection? Section => OptionalDwelling.LeastAmpacitySection;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Demand.Method != DemandMethodName.DwellingOptional)
            yield break;
        if (context.Panel.System.Legs.Length != 2)
            yield return Misplaced(context, $"this panel has {context.Panel.System}");
        else if (context.Schedule.Feeder?.Ocpd is { } device && device < OptionalDwelling.LeastAmpacity)
            yield return Misplaced(context, $"the feeder's device is {device}");
    }

    private Finding Misplaced(RuleContext context, string but) => Found(
        context,
        $"Demand method dwelling-optional is for three wires of {OptionalDwelling.LeastAmpacity} or more; {but}.");
}
