using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running;

/// <summary>How often the neutral is bonded while the panel is on standby.</summary>
public enum NeutralBonds
{
    /// <summary>Too little is written down to tell.</summary>
    Unknown,

    Once,

    /// <summary>At the source and at the service: neutral current flows on grounding conductors.</summary>
    Twice,

    /// <summary>Nowhere: no breaker clears a fault from hot to case.</summary>
    Nowhere,
}

/// <summary>Where the neutral of this schedule is bonded on standby, what follows, and the one right sign at the inlet.</summary>
/// <remarks>
/// A source is a system of its own only where the transfer equipment switches the neutral: that is no property of the generator.
/// Seen in trade questions and answers on 250.20 and 250.30, and in a trade forum.
/// </remarks>
public sealed record NeutralVerdict(NeutralBonds Bonds, bool? IsSeparatelyDerived, StandbySource Source)
{
    public static readonly CodeSection Section = Nec.FromMemory("250.30(A)(1)");

    /// <summary>Nothing without a source.</summary>
    public static NeutralVerdict? Of(Schedule schedule) => schedule.Source is not { } source
        ? null
        : new NeutralVerdict(BondsOf(schedule.Transfer?.SwitchesNeutral, source.Neutral), schedule.Transfer?.SwitchesNeutral, source);

    /// <summary>What the source's neutral has to be with this transfer equipment; nothing where that is not written down.</summary>
    public SourceNeutral? MustBe => IsSeparatelyDerived switch
    {
        true => SourceNeutral.Bonded,
        false => SourceNeutral.Floating,
        null => null,
    };

    /// <summary>
    /// The wording of the sign at the inlet; nothing without an inlet, and where nobody wrote down what the equipment switches.
    /// </summary>
    public string? Sign => (Source.Outlet, IsSeparatelyDerived) switch
    {
        (not null, true) => SignTexts.SeparatelyDerived,
        (not null, false) => SignTexts.NotSeparatelyDerived,
        _ => null,
    };

    /// <summary>Where the one bond belongs.</summary>
    public string Place => IsSeparatelyDerived switch
    {
        true => "at the source, and an electrode there where it is permanent",
        false => "at the service alone, none at the source or in this panel",
        null => "not to be told until transfer.switches_neutral is written down",
    };

    private static NeutralBonds BondsOf(bool? switched, SourceNeutral? neutral) => (switched, neutral) switch
    {
        (null, _) or (_, null) => NeutralBonds.Unknown,
        (true, SourceNeutral.Bonded) or (false, SourceNeutral.Floating) => NeutralBonds.Once,
        (false, SourceNeutral.Bonded) => NeutralBonds.Twice,
        _ => NeutralBonds.Nowhere,
    };
}
