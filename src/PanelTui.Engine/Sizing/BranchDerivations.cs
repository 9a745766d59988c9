using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>How the sizes of one branch circuit come about.</summary>
public static class BranchDerivations
{
    /// <summary>Notes to the section give 3 % and 5 %, which a note cannot enforce.</summary>
    private static readonly CodeSection DropNote = Nec.Section("210.19(A)");

    /// <param name="branch">The sizes.</param>
    /// <param name="figure">The name it was asked by.</param>
    public static Derivation Why(this BranchSizing branch, string figure) => new(
        figure,
        $"Branch circuit at space {branch.Circuit.Space}: {branch.Circuit.Called}",
        [
            .. branch.Loads.Select(load => load.Step(branch.Edition)),
            .. LoadSteps(branch),
            .. BreakerSteps(branch),
            .. WireSteps(branch),
            .. DropSteps(branch),
        ]);

    private static IEnumerable<DerivationStep> LoadSteps(BranchSizing branch)
    {
        var load = branch.Load;
        yield return SizingSteps.Step("On its worst pole, at 100 %", load.AtFull, Citation.Arithmetic);
        if (load.Continuous > Amperes.Zero)
        {
            yield return SizingSteps.Step(
                $"{BranchLoad.Extra} of what counts as continuous", load.Continuous * BranchLoad.Extra,
                BranchLoad.DeviceSection.In(branch.Edition));
        }
        yield return SizingSteps.Step(
            "For the wire to carry", load.Conductor.Required,
            (branch.IsMotorCircuit ? BranchLoad.MotorSection : BranchLoad.ConductorSection).In(branch.Edition));
    }

    private static IEnumerable<DerivationStep> BreakerSteps(BranchSizing branch)
    {
        yield return SizingSteps.Step("The breaker it has", branch.Breaker, Citation.Schedule);
        if (branch.StandardBreaker is { } standard)
            yield return SizingSteps.Step("The smallest standard breaker", standard, StandardRatings.Section.In(branch.Edition));
        if (branch.Range is { } range)
        {
            yield return SizingSteps.Step("The largest breaker as a rule", range.Usual, range.Section.In(branch.Edition));
            yield return SizingSteps.Step("The largest if it will not start on that", range.Most, range.Section.In(branch.Edition));
        }
    }

    private static IEnumerable<DerivationStep> WireSteps(BranchSizing branch)
    {
        if (branch.Smallest is { } smallest)
            yield return SizingSteps.Step($"The smallest wire: {smallest.Conductor}", smallest.Ampacity, Table(branch));
        if (branch.Wire is { } wire)
        {
            foreach (var step in branch.IsMotorCircuit ? MotorWire(branch, wire) : SizingSteps.Of("Its wire,", wire, branch.Protection))
                yield return step;
        }
        if (branch.Grounding is { } grounding)
        {
            foreach (var step in SizingSteps.Of(grounding, branch.Edition))
                yield return step;
        }
        else if (branch.GroundingConductor is { } ground)
        {
            yield return SizingSteps.Step(
                $"Its grounding conductor: {ground}, by the breaker", branch.Breaker, GroundingConductor.Section.In(branch.Edition));
        }
    }

    /// <summary>Overloads protect a motor's wire, so its breaker may be larger than the ampacity: 240.4(G) sends to Article 430 or 440.</summary>
    private static IEnumerable<DerivationStep> MotorWire(BranchSizing branch, ConductorFit wire)
    {
        foreach (var step in SizingSteps.Ampacity("Its wire,", wire, branch.Edition))
            yield return step;
        var label = $"Its wire, {wire.Conductor}: largest device, as for the motor";
        if (branch.Range is { } range)
            yield return SizingSteps.Step(label, range.Usual, ConductorProtection.Motors.In(branch.Edition));
        else
            yield return DerivationStep.Remark($"{label}: as on its nameplate", ConductorProtection.Motors.In(branch.Edition));
    }

    private static IEnumerable<DerivationStep> DropSteps(BranchSizing branch)
    {
        if (branch.Drop is not { } drop)
        {
            yield return DerivationStep.Remark(
                "Wire, length or load not stated: no drop is worked out", DropNote.In(branch.Edition));
            yield break;
        }
        foreach (var step in SizingSteps.Of(drop.Run, drop.Impedance, branch.Edition))
            yield return step;
        yield return SizingSteps.Step("Voltage drop to the farthest load", drop.Share, DropNote.In(branch.Edition));
        if (drop.WithFeeder is { } together)
            yield return SizingSteps.Step("With the feeder's", together, DropNote.In(branch.Edition));
    }

    private static Citation Table(BranchSizing branch) => ConductorAmpacity.Section.In(branch.Edition);
}
