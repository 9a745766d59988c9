using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Motors;

/// <summary>The nameplate says the least that the wire of equipment has to carry.</summary>
public sealed class ConductorBelowMcaRule : CodeRule
{
    public override string Name => "conductor-below-mca";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A wire carries the minimum circuit ampacity on the nameplate.";

    public override string Why => "The nameplate counts compressor and fans together; a smaller wire runs too hot.";

    public override string Advice =>
        "Read the nameplate and the size printed on the wire; a larger wire would match.";

    public override CodeSection? Section { get; } = Nec.Section("440.4(B), 440.32");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        let wire = branch.Wire
        let needed = MostOf(branch)
        where wire is not null && needed > wire.Ampacity
        select Below(context, branch, wire, needed.Value);

    private Finding Below(RuleContext context, BranchSizing branch, ConductorFit wire, Amperes needed) => Found(
        context,
        [branch.Circuit.Space],
        $"{RuleWords.Place(branch.Circuit)} has a nameplate that asks for {RuleWords.Beyond(needed, wire.Ampacity)}; "
        + $"{wire.Conductor} carries {wire.Ampacity} at {RuleWords.Terminals(context, branch.Conditions)}.",
        "Read the nameplate again, and the size printed on the wire.");

    /// <summary>All that are alike together.</summary>
    private static Amperes? MostOf(BranchSizing branch) => branch.Loads.Max(load =>
        load.Load.MinimumCircuitAmpacity is { } plate ? new Amperes(Bounded.Product(plate.Value, load.Load.Count)) : (Amperes?)null);
}
