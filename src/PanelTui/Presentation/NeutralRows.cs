using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>Where the neutral is bonded on standby, what will trip, and the sign at the inlet.</summary>
internal static class NeutralRows
{
    public static IEnumerable<string> Of(Schedule schedule)
    {
        if (NeutralVerdict.Of(schedule) is not { } verdict) return ["No source is stated."];
        return Lines(verdict, schedule).SelectMany(line => Wrapped.Of(line, 78));
    }

    private static IEnumerable<string> Lines(NeutralVerdict verdict, Schedule schedule)
    {
        yield return $"{Switching(verdict)}. Source: {Bonding(verdict.Source.Neutral)}{Gfci(verdict.Source.Gfci)}.";
        if (verdict.Place is { } place) yield return $"The one bond belongs {place} ({NeutralVerdict.Section.In(schedule.Code.Edition)}).";
        yield return Conclusion(verdict);
        if (verdict.Sign is { } sign) yield return $"Sign at the inlet: {sign}";
    }

    /// <summary>How often the neutral is bonded on standby, and what follows.</summary>
    public static string Conclusion(NeutralVerdict verdict) => verdict.Bonds switch
    {
        NeutralBonds.Once => "Written down: bonded once. Check it at the source's nameplate and with a clamp on the grounding conductor: it reads 0 A.",
        NeutralBonds.Twice => "BONDED TWICE: neutral current flows on grounding conductors"
            + (verdict.Source.Gfci == true ? ", and the GFCI at the source trips as soon as the panel is connected." : "; a GFCI at the source would trip."),
        NeutralBonds.Unknown when verdict is { Standing: SourceStanding.OutletsOnly, Source.Neutral: SourceNeutral.Floating } =>
            "A floating frame is as built for cords alone: the first fault trips nothing, and testers show an open ground. Do not add a bond to it.",
        NeutralBonds.Unknown when verdict is { Standing: SourceStanding.OnlySystem, Source.Neutral: SourceNeutral.Floating } =>
            "The one bond is not in this file: find it at the first panel or disconnect. With none, no breaker clears a fault from hot to case.",
        NeutralBonds.Nowhere => "BONDED NOWHERE: a breaker will not clear a fault from hot to case; testers show an open ground, vehicle chargers refuse.",
        _ => $"Not to be told: write down {Missing(verdict)}.",
    };

    private static string Missing(NeutralVerdict verdict) => (verdict.Standing, verdict.Source.Neutral) switch
    {
        (SourceStanding.Unknown, null) => "transfer.switches_neutral and source.neutral",
        (SourceStanding.Unknown, _) => "transfer.switches_neutral",
        _ => "source.neutral",
    };

    private static string Switching(NeutralVerdict verdict) => verdict.Standing switch
    {
        SourceStanding.Separate => "Transfer equipment: switches the neutral, so the source is a separately derived system",
        SourceStanding.SharesTheNeutral => "Transfer equipment: leaves the neutral connected, so the source is not separately derived",
        SourceStanding.OnlySystem => "No transfer equipment and no normal supply are written down: the source is the only system here (off-grid)",
        SourceStanding.OutletsOnly => "No transfer equipment and no normal supply are written down: this panel hangs on the source's own outlet",
        _ => "Transfer equipment: whether it switches the neutral is not written down",
    };

    private static string Bonding(SourceNeutral? neutral) => neutral switch
    {
        SourceNeutral.Bonded => "neutral bonded",
        SourceNeutral.Floating => "neutral floating",
        _ => "bond not written down",
    };

    private static string Gfci(bool? gfci) => gfci switch
    {
        true => ", with GFCI",
        false => ", without GFCI",
        null => "",
    };
}
