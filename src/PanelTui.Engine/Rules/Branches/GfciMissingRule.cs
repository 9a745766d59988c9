using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>Receptacles in wet and earthed places have ground-fault protection, on standby as on the grid.</summary>
/// <remarks>A receptacle may give it in place of the breaker; the schedule has no key for that, so this is no error.</remarks>
public sealed class GfciMissingRule : CodeRule
{
    public override string Name => "gfci-missing";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Circuits with outlets in places that the edition lists have ground-fault protection.";

    public override string Why =>
        "A breaker without it lets a current through a person that kills before anything trips.";

    public override string Advice =>
        "Check whether GFCI receptacles protect these outlets, and the exceptions of the section; else put in a "
        + "GFCI or dual-function breaker.";

    public override CodeSection? Section => GroundFaultPlaces.Dwelling;

    public override IEnumerable<CodeSection> Sections =>
        [GroundFaultPlaces.Dwelling, GroundFaultPlaces.OutdoorOutlets, GroundFaultPlaces.OtherThanDwelling];

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit.Breaker.Protection is Protection.Standard or Protection.Afci
        let need = GroundFaultNeed.Of(circuit, context.Schedule.Code)
        where need is not null
        select Found(
            context,
            circuit.Spaces,
            $"{RuleWords.Place(circuit)} serves {RuleWords.Listed(need.Places)}; "
            + $"{RuleWords.ABreaker(circuit.Breaker.Protection)} gives no ground-fault protection.") with
        {
            Cite = need.Cite,
        };
}
