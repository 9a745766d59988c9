using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Sheets;

/// <summary>A sign that an installation asks for.</summary>
/// <param name="Prescribed">Whether its words are the code's; otherwise the section says what to name, and the words are ours.</param>
internal sealed record NeededSign(string Where, string Text, CodeSection Section, bool Prescribed)
{
    /// <summary>How its words came about.</summary>
    public string Wording => (Prescribed, Section == SignTexts.AtInlet) switch
    {
        (true, _) => "Words as prescribed.",
        (_, true) => "Words as prescribed at an inlet for a portable generator; ask the authority whether it wants them for inverters.",
        _ => "The section says what the sign names, not in which words; these are a proposal.",
    };

    private static readonly CodeSection AtService = Nec.Section("702.7(A)");

    private static readonly CodeSection SeveralSources = Nec.Section((2017, "705.10"), (2023, "710.10"));

    private static readonly CodeSection SupplySection = Nec.Section("408.4(B)");

    public static IEnumerable<NeededSign> For(Schedule schedule)
    {
        if (Supply(schedule) is { } supply) yield return supply;
        if (schedule.Source is not { } source) yield break;
        yield return Service(source);
        if (source.Kind == SourceKind.Inverters || source.Solar is not null)
            yield return new NeededSign("where the supplies come together", "CAUTION: MULTIPLE SOURCES OF POWER.", SeveralSources, true);
        if (Inlet(schedule) is { } inlet) yield return inlet;
        if (source.Arrangement == SourceArrangement.InPhase || schedule.Panel.System == PanelSystem.OneLeg)
            yield return new NeededSign("at the panel", SignTexts.OneLegSource, SignTexts.AtPanelOnOneLegSource, true);
    }

    /// <summary>What the signs hang on that the file does not tell.</summary>
    public static IEnumerable<string> Undecided(Schedule schedule)
    {
        if (schedule is { Source.Outlet: not null, Transfer.NeutralIsSwitched: null } or { Source.Outlet: not null, Transfer: null })
            yield return "The sign at the inlet depends on transfer.switches_neutral, which the file does not state.";
        if (schedule.Source is { Location.Length: 0 })
            yield return "The sign at the service names where the source stands; the file does not state source.location.";
        if (schedule.Panel.FedFrom.Length == 0)
            yield return "The sign at the panel names what feeds it; the file does not state panel.fed_from.";
    }

    /// <summary>One- and two-family dwellings need none: 408.4(B).</summary>
    private static NeededSign? Supply(Schedule schedule)
    {
        if (schedule.Code.Occupancy == Occupancy.Dwelling) return null;
        var normal = PanelWords.Or(schedule.Panel.FedFrom, PanelWords.ToFillIn);
        var standby = schedule.Source is { } source ? $" AND FROM {Named(source)}" : "";
        return new NeededSign("at the panel", $"FED FROM {normal}{standby}", SupplySection, false);
    }

    private static NeededSign Service(StandbySource source) =>
        new("at the service equipment", $"STANDBY SOURCE: {Named(source)}", AtService, false);

    private static NeededSign? Inlet(Schedule schedule) => schedule switch
    {
        { Source.Outlet: null } or { Transfer: null } => null,
        { Transfer.NeutralIsSwitched: true, Source: { } source } => AtInlet(SignTexts.SeparatelyDerived, source),
        { Transfer.NeutralIsSwitched: false, Source: { } source } => AtInlet(SignTexts.NotSeparatelyDerived, source),
        _ => null,
    };

    /// <summary>The section speaks of portable generators; with inverters it is the same question, but nobody prescribes its words.</summary>
    private static NeededSign AtInlet(string text, StandbySource source) =>
        new("at the inlet", text, SignTexts.AtInlet, source.Kind == SourceKind.Generator);

    private static string Named(StandbySource source)
    {
        return $"{source.Kind.Sign}, {PanelWords.Or(source.Location, $"AT {PanelWords.ToFillIn}")}";
    }
}
