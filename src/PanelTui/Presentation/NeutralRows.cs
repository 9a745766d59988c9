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
        yield return $"Transfer equipment: {Switching(verdict)}. Source: {Bonding(verdict.Source.Neutral)}{Gfci(verdict.Source.Gfci)}.";
        yield return $"The one bond belongs {verdict.Place} ({NeutralVerdict.Section.In(schedule.Code.Edition)}).";
        yield return Conclusion(verdict);
        if (verdict.Sign is { } sign) yield return $"Sign at the inlet: {sign}";
    }

    private static string Conclusion(NeutralVerdict verdict) => verdict.Bonds switch
    {
        NeutralBonds.Once => "Written down: bonded once. Check it at the source's nameplate and with a clamp on the grounding conductor: it reads 0 A.",
        NeutralBonds.Twice => "BONDED TWICE: neutral current flows on grounding conductors"
            + (verdict.Source.Gfci == true ? ", and the GFCI at the source trips as soon as the panel is connected." : "; a GFCI at the source would trip."),
        NeutralBonds.Nowhere => "BONDED NOWHERE: a breaker will not clear a fault from hot to case; testers show an open ground, vehicle chargers refuse.",
        _ => $"Not to be told: write down {Missing(verdict)}.",
    };

    private static string Missing(NeutralVerdict verdict) => (verdict.IsSeparatelyDerived, verdict.Source.Neutral) switch
    {
        (null, null) => "transfer.switches_neutral and source.neutral",
        (null, _) => "transfer.switches_neutral",
        _ => "source.neutral",
    };

    private static string Switching(NeutralVerdict verdict) => verdict.IsSeparatelyDerived switch
    {
        true => "switches the neutral, so the source is a separately derived system",
        false => "leaves the neutral connected, so the source is not separately derived",
        null => "whether it switches the neutral is not written down",
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
