using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules;

/// <summary>The findings, parted into those that stand open and those that the schedule accepts.</summary>
/// <param name="Open">In the order of the rule book.</param>
/// <param name="Accepted">In the same order.</param>
/// <param name="Idle">Acceptances that fit no finding, in the order of the file.</param>
public sealed record Judgement(
    ImmutableArray<Finding> Open, ImmutableArray<AcceptedFinding> Accepted, ImmutableArray<Acceptance> Idle)
{
    /// <remarks>Of several acceptances that fit a finding the first in the file gives the reason.</remarks>
    public static Judgement Of(ImmutableArray<Finding> findings, ImmutableArray<Acceptance> acceptances)
    {
        if (acceptances.IsEmpty)
            return new Judgement(findings, [], []);
        var judged = findings
            .Select(finding => (Finding: finding, By: acceptances.FirstOrDefault(one => Fits(one, finding))))
            .ToLookup(pair => pair.By is not null);
        return new Judgement(
            [.. judged[false].Select(pair => pair.Finding)],
            [.. judged[true].Select(pair => new AcceptedFinding(pair.Finding, pair.By!.Because))],
            [.. acceptances.Where(one => !findings.Any(finding => Fits(one, finding)))]);
    }

    private static bool Fits(Acceptance acceptance, Finding finding) =>
        acceptance.Rule == finding.Rule
        && (acceptance.Space is not { } space || finding.Spaces.Any(space.Overlaps));
}
