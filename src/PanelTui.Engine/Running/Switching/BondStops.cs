namespace PanelTui.Engine.Running.Switching;

/// <summary>What has to be settled before anything is switched: a neutral that is not bonded exactly once on standby.</summary>
internal static class BondStops
{
    private const string Who =
        "Have a qualified electrician look at the source's nameplate, at what the transfer equipment switches and at this panel, and put it right; "
        + "what the authority having jurisdiction says goes before this page.";

    public static IEnumerable<string> Of(NeutralVerdict? verdict)
    {
        if (verdict is null) yield break;
        if (verdict.Bonds == NeutralBonds.Twice)
            yield return $"STOP, do not switch over: by this schedule the neutral is bonded {verdict.BondWords} on standby. Neutral current then flows on grounding conductors and metal parts. {Who}";
        if (verdict.Bonds == NeutralBonds.Nowhere)
            yield return $"STOP, do not switch over: by this schedule the neutral is bonded nowhere on standby. No breaker then clears a fault from hot to case, and the case stays live. {Who}";
        if (verdict is { IsPanelBondTooMany: true, Bonds: not NeutralBonds.Twice })
            yield return $"STOP, do not switch over: the neutral is bonded in this panel, which a feeder supplies. Beside the bond at the service, neutral current flows on grounding conductors. {Who}";
        if (verdict is { Bonds: NeutralBonds.Unknown, IsFloatingForCords: false })
            yield return $"Not settled: this schedule does not tell where the neutral is bonded on standby{Missing(verdict)}. Find out before the first transfer. {Who}";
    }

    private static string Missing(NeutralVerdict verdict) => verdict.Missing is [] ? "" : $" ({string.Join(" and ", verdict.Missing)} not written down)";
}
