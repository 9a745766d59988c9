using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Switching;

/// <summary>What has to be settled before anything is switched: a neutral that is not bonded exactly once on standby.</summary>
internal static class BondStops
{
    private const string Who =
        "Have a qualified electrician look at the source's nameplate, at what the transfer equipment switches and at this panel, and put it right; "
        + "what the authority having jurisdiction says goes before this page.";

    public static IEnumerable<string> Of(SwitchingFacts facts)
    {
        if (facts.Neutral is not { } verdict) yield break;
        var sentences = Sentences(verdict, verdict.IsInferred ? "do not connect the source" : "do not switch over").ToList();
        foreach (var sentence in sentences) yield return sentence;
        if (facts.Kind == TransferKind.Automatic && sentences.Exists(sentence => sentence.StartsWith("STOP", StringComparison.Ordinal)))
            yield return "This equipment changes over by itself, whatever this page says: until that is put right its selector to OFF as its instructions say, or the source's output OFF.";
    }

    private static IEnumerable<string> Sentences(NeutralVerdict verdict, string not)
    {
        switch (verdict.Bonds)
        {
            case NeutralBonds.Twice:
                yield return $"STOP, {not}: by this schedule the neutral is bonded {verdict.BondWords} on standby. Neutral current then flows on grounding conductors and metal parts. {Who}";
                break;
            case NeutralBonds.Nowhere:
                yield return $"STOP, {not}: by this schedule the neutral is bonded nowhere on standby. No breaker then clears a fault from hot to case, and the case stays live. {Who}";
                break;
            case NeutralBonds.Once or NeutralBonds.Unknown:
                if (verdict.IsPanelBondTooMany)
                    yield return $"STOP, {not}: the neutral is bonded in this panel, which a feeder supplies. Beside the bond at the service, neutral current flows on grounding conductors. {Who}";
                if (verdict is { Bonds: NeutralBonds.Unknown, IsFloatingForCords: false })
                    yield return $"Not settled: this schedule does not tell where the neutral is bonded on standby{Missing(verdict)}. Find out before the first transfer. {Who}";
                break;
            default:
                throw Unnamed.Of(verdict.Bonds);
        }
    }

    private static string Missing(NeutralVerdict verdict) => verdict.Missing is [] ? "" : $" ({string.Join(" and ", verdict.Missing)} not written down)";
}
