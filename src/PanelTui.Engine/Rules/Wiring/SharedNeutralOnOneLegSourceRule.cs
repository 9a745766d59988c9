using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>
/// One 120 V unit on both legs: what cancels on a shared neutral under the grid adds on it on standby.
/// </summary>
public sealed class SharedNeutralOnOneLegSourceRule : CodeRule
{
    public override string Name => "shared-neutral-on-one-leg-source";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "A panel whose legs are in phase on standby has no circuits that share a neutral.";

    public override string Why =>
        "The currents of both legs add on the shared neutral: it can carry the sum of the breakers, and none of "
        + "them trips.";

    public override string Advice =>
        "Take the circuit off this panel, give each leg a neutral of its own, or feed the panel from a 120/240 V "
        + "source.";

    public override CodeSection? Section { get; } = Nec.Section("710.15(C)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Source?.Arrangement != SourceArrangement.InPhase
            ? []
            : from shared in SharedNeutral.Together(context.Circuits).Concat(SharedNeutral.OnOneBreaker(context.Circuits, context.Connected.Loads))
              select Found(
                  context,
                  shared.Spaces,
                  $"{Sharing(shared)} a neutral; on one 120 V unit the currents add on it, up to {Sum(shared)}.");

    private static string Sharing(SharedNeutral shared) => shared.Circuits is [var alone]
        ? $"The poles of {RuleWords.Place(alone)} share"
        : $"{RuleWords.Places(shared.Circuits)} share";

    private static string Sum(SharedNeutral shared) => RuleWords.Sum(
        from circuit in shared.Circuits
        from _ in circuit.Spaces
        select circuit.Breaker.Rating);
}
