using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>
/// 120 V circuits of the living rooms of a dwelling have arc-fault protection, on standby as on the grid.
/// </summary>
public sealed class AfciMissingRule : CodeRule
{
    public override string Name => "afci-missing";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Circuits of a dwelling with 120 V outlets in rooms that the edition lists have arc-fault protection.";

    public override string Why =>
        "A loose or crushed wire can arc and set fire to a house without ever tripping a breaker.";

    public override string Advice =>
        "Check the exceptions of the section, such as a short extension without a new outlet; else put in an AFCI or "
        + "dual-function breaker. Moving a circuit here is a change to it.";

    public override CodeSection? Section => ArcFaultRooms.Section;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Code.Occupancy != Occupancy.Dwelling
            ? []
            : from circuit in context.Circuits
              where circuit is { IsSpare: false, Breaker.Protection: Protection.Standard or Protection.Gfci }
              where circuit.Breaker.Rating <= ArcFaultRooms.Most && IsTo120Volts(circuit)
              let rooms = ArcFaultRooms.All.Where(room => circuit.Places.Contains(room.Place)).Select(room => room.Place).ToArray()
              where rooms.Length > 0
              select Found(
                  context,
                  circuit.Spaces,
                  $"{RuleWords.Place(circuit)} serves {RuleWords.Listed(rooms)}; "
                  + $"{RuleWords.ABreaker(circuit.Breaker.Protection)} gives no arc-fault protection.");

    private static bool IsTo120Volts(Circuit circuit) =>
        circuit.Breaker.Poles == 1 || circuit.Loads.Any(load => load.Across == Across.LineToNeutral);
}
