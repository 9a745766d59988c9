using PanelTui.Engine;
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
        if (verdict is { Place: { } place, Section: { } section })
            yield return $"The one bond belongs {place} ({section.In(schedule.Code.Edition)}).";
        yield return Conclusion(verdict);
        if (PanelBond(verdict) is { } bond) yield return bond;
        if (verdict.Sign is { } sign) yield return $"Sign at the inlet: {sign}";
    }

    /// <summary>How often the neutral is bonded on standby, and what follows.</summary>
    public static string Conclusion(NeutralVerdict verdict) => verdict.Bonds switch
    {
        NeutralBonds.Once => "Written down: bonded once. Check it at the source's nameplate and with a clamp on the grounding conductor: it reads 0 A.",
        NeutralBonds.Twice => $"BONDED {Loud(verdict.BondWords)}: neutral current flows on grounding conductors"
            + (verdict.Source.Gfci == true ? ", and the GFCI at the source trips as soon as the panel is connected." : "; a GFCI at the source would trip."),
        NeutralBonds.Unknown when verdict.IsFloatingForCords =>
            "A floating frame is as built for cords alone: the first fault trips nothing, and testers show an open ground. Do not add a bond to it.",
        NeutralBonds.Unknown when verdict is { Standing: SourceStanding.OnlySystem, Source.Neutral: SourceNeutral.Floating } =>
            "The one bond is not in this file: find it at the first panel or disconnect. With none, no breaker clears a fault from hot to case.",
        NeutralBonds.Nowhere => "BONDED NOWHERE: a breaker will not clear a fault from hot to case; testers show an open ground, vehicle chargers refuse.",
        NeutralBonds.Unknown => $"Not to be told: write down {string.Join(" and ", verdict.Missing)}.",
        _ => throw Unnamed.Of(verdict.Bonds),
    };

    /// <summary>A bond in this panel where a feeder supplies it; nothing where there is none, or it may be the one that belongs.</summary>
    public static string? PanelBond(NeutralVerdict verdict) => verdict.IsPanelBondTooMany
        ? "The bond in this panel comes on top of the one at the service or source: neutral current flows on grounding conductors (250.24(A)(5), 250.142(B))."
        : null;

    /// <summary>`TWICE (at the service and at the source)`.</summary>
    private static string Loud(string words) =>
        words.Replace("twice", "TWICE", StringComparison.Ordinal).Replace("three times", "THREE TIMES", StringComparison.Ordinal);

    private static string Switching(NeutralVerdict verdict) => verdict.Standing switch
    {
        SourceStanding.Separate => "Transfer equipment: switches the neutral, so the source is a separately derived system",
        SourceStanding.SharesTheNeutral => "Transfer equipment: leaves the neutral connected, so the source is not separately derived",
        SourceStanding.OnlySystem => "Inferred, not stated: as no transfer equipment and no normal supply (feeder.ocpd) are written down, the source is taken as the only system here (off-grid)",
        SourceStanding.OutletsOnly => "Inferred, not stated: as no transfer equipment and no normal supply (feeder.ocpd) are written down, this panel is taken to hang on the source's own outlet",
        SourceStanding.Unknown => "Transfer equipment: whether it switches the neutral is not written down",
        _ => throw Unnamed.Of(verdict.Standing),
    };

    private static string Bonding(SourceNeutral? neutral) => neutral switch
    {
        SourceNeutral.Bonded => "neutral bonded",
        SourceNeutral.Floating => "neutral floating",
        null => "bond not written down",
        _ => throw Unnamed.Of(neutral),
    };

    private static string Gfci(bool? gfci) => gfci switch
    {
        true => ", with GFCI",
        false => ", without GFCI",
        null => "",
    };
}
