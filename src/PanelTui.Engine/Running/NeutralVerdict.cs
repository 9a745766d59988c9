using System.Collections.Immutable;
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

    /// <summary>At the source and at the service, or in the panel besides: neutral current flows on grounding conductors.</summary>
    Twice,

    /// <summary>Nowhere: no breaker clears a fault from hot to case.</summary>
    Nowhere,
}

/// <summary>What the source is to the wiring of the building: the rows of the decision table on its neutral.</summary>
public enum SourceStanding
{
    /// <summary>Too little is written down to tell.</summary>
    Unknown,

    /// <summary>The transfer equipment leaves the neutral connected, so the service's bond serves the source too.</summary>
    SharesTheNeutral,

    /// <summary>The transfer equipment switches the neutral: a separately derived system.</summary>
    Separate,

    /// <summary>There is no grid: the source is the only system of this panel.</summary>
    OnlySystem,

    /// <summary>The panel hangs on the source's own outlet, and no wiring of a building is behind it.</summary>
    OutletsOnly,
}

/// <summary>Where the neutral of this schedule is bonded on standby, what follows, and the one right sign at the inlet.</summary>
/// <remarks>
/// A source is a system of its own only where the transfer equipment switches the neutral: that is no property of the generator.
/// Seen in trade questions and answers on 250.20 and 250.30, and in a trade forum.
/// </remarks>
public sealed record NeutralVerdict(NeutralBonds Bonds, SourceStanding Standing, StandbySource Source)
{
    private static readonly CodeSection OfItsOwn = Nec.FromMemory("250.30(A)(1)");
    private static readonly CodeSection AtTheService = Nec.Section("250.24(A)(5), 250.142(B)");
    private static readonly CodeSection OnTheLoadSide = Nec.Section("250.142(B)");
    private static readonly CodeSection ForCordsAlone = Nec.FromMemory("250.34(A)");

    /// <summary>Whether neutral and ground are bonded in this panel; nothing where nobody wrote it down.</summary>
    public bool? InPanel { get; init; }

    /// <summary>Nothing without a source.</summary>
    public static NeutralVerdict? Of(Schedule schedule)
    {
        if (schedule.Source is not { } source)
            return null;
        var standing = StandingOf(schedule, source);
        return new NeutralVerdict(BondsOf(standing, source.Neutral, schedule.Panel.NeutralBonded), standing, source)
        {
            InPanel = schedule.Panel.NeutralBonded,
        };
    }

    /// <summary>What says where the bond belongs; nothing where that is not to be told.</summary>
    /// <remarks>250.30 is about systems that are separately derived, and about no others.</remarks>
    public CodeSection? Section => Standing switch
    {
        SourceStanding.Separate => OfItsOwn,
        SourceStanding.SharesTheNeutral => AtTheService,
        SourceStanding.OnlySystem => OnTheLoadSide,
        SourceStanding.OutletsOnly => ForCordsAlone,
        SourceStanding.Unknown => null,
        _ => throw Unnamed.Of(Standing),
    };

    /// <summary>That there is no grid is written nowhere: it follows from what is absent.</summary>
    public bool IsInferred => Standing is SourceStanding.OnlySystem or SourceStanding.OutletsOnly;

    /// <summary>`twice (at the service and at the source)`: each bond on standby that follows from the schedule.</summary>
    public string BondWords
    {
        get
        {
            string[] places =
            [
                .. Standing == SourceStanding.SharesTheNeutral ? ["at the service"] : Array.Empty<string>(),
                .. Source.Neutral == SourceNeutral.Bonded ? ["at the source"] : Array.Empty<string>(),
                .. InPanel == true ? ["in this panel"] : Array.Empty<string>(),
            ];
            return places is [var first, var second, var third]
                ? $"three times ({first}, {second} and {third})"
                : $"{(places.Length == 2 ? "twice" : "once")} ({string.Join(" and ", places)})";
        }
    }

    /// <summary>A bond in a panel behind a service or a source that has one; off the grid it may be the one that belongs.</summary>
    public bool IsPanelBondTooMany => InPanel == true && !IsInferred;

    /// <summary>A floating frame that feeds cords alone is as it was built, and needs no bond.</summary>
    public bool IsFloatingForCords => this is { Standing: SourceStanding.OutletsOnly, Source.Neutral: SourceNeutral.Floating };

    /// <summary>The keys that would tell how often it is bonded.</summary>
    public ImmutableArray<string> Missing => Bonds != NeutralBonds.Unknown ? [] :
    [
        .. Standing == SourceStanding.Unknown ? ["transfer.switches_neutral"] : Array.Empty<string>(),
        .. Source.Neutral is null ? ["source.neutral"] : Array.Empty<string>(),
        .. Standing == SourceStanding.OnlySystem && Source.Neutral is not null && InPanel is null
            ? ["panel.neutral_bonded"]
            : Array.Empty<string>(),
    ];

    /// <summary>Nothing where that is not to be told, or there is no other system to be separate from.</summary>
    public bool? IsSeparatelyDerived => Standing switch
    {
        SourceStanding.Separate => true,
        SourceStanding.SharesTheNeutral => false,
        SourceStanding.OnlySystem or SourceStanding.OutletsOnly or SourceStanding.Unknown => null,
        _ => throw Unnamed.Of(Standing),
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

    /// <summary>Where the one bond belongs; nothing where that is not to be told.</summary>
    public string? Place => Standing switch
    {
        SourceStanding.Separate => "at the source, and an electrode there where it is permanent",
        SourceStanding.SharesTheNeutral => "at the service alone, none at the source or in this panel",
        SourceStanding.OnlySystem => "at one point, usually the first panel or disconnect, with an electrode there; the source floating",
        SourceStanding.OutletsOnly => "as the source's frame was built, with no electrode where its outlets feed nothing but cords",
        SourceStanding.Unknown => null,
        _ => throw Unnamed.Of(Standing),
    };

    /// <remarks>Without transfer equipment and without a device on a normal supply there is no grid in the file.</remarks>
    private static SourceStanding StandingOf(Schedule schedule, StandbySource source) => schedule switch
    {
        { Transfer.NeutralIsSwitched: true } => SourceStanding.Separate,
        { Transfer.NeutralIsSwitched: false } => SourceStanding.SharesTheNeutral,
        { Transfer: null, Feeder.Ocpd: null } or { Transfer: null, Feeder: null } =>
            source.Outlet is null ? SourceStanding.OnlySystem : SourceStanding.OutletsOnly,
        _ => SourceStanding.Unknown,
    };

    /// <summary>Counts the bonds that one neutral sees on standby: at the source, at the service, in this panel.</summary>
    private static NeutralBonds BondsOf(SourceStanding standing, SourceNeutral? neutral, bool? inPanel)
    {
        if (neutral is not { } stated)
            return NeutralBonds.Unknown;
        var known = BondsAt(stated) + (inPanel == true ? 1 : 0);
        return standing switch
        {
            SourceStanding.Unknown => NeutralBonds.Unknown,
            SourceStanding.SharesTheNeutral => Counted(1 + known, none: NeutralBonds.Nowhere),
            SourceStanding.Separate => Counted(known, none: NeutralBonds.Nowhere),
            SourceStanding.OnlySystem or SourceStanding.OutletsOnly => Counted(known, none: NeutralBonds.Unknown),
            _ => throw Unnamed.Of(standing),
        };
    }

    private static int BondsAt(SourceNeutral neutral) => neutral switch
    {
        SourceNeutral.Bonded => 1,
        SourceNeutral.Floating => 0,
        _ => throw Unnamed.Of(neutral),
    };

    private static NeutralBonds Counted(int bonds, NeutralBonds none) =>
        bonds == 0 ? none : bonds == 1 ? NeutralBonds.Once : NeutralBonds.Twice;
}

/// <summary>The words for how often a neutral is bonded.</summary>
public static class NeutralBondsWords
{
    extension(NeutralBonds bonds)
    {
        /// <summary>As JSON writes it: `twice`.</summary>
        public string Word => bonds switch
        {
            NeutralBonds.Unknown => "unknown",
            NeutralBonds.Once => "once",
            NeutralBonds.Twice => "twice",
            NeutralBonds.Nowhere => "nowhere",
            _ => throw Unnamed.Of(bonds),
        };
    }
}

/// <summary>The words for what a source is to the wiring of the building.</summary>
public static class SourceStandingWords
{
    extension(SourceStanding standing)
    {
        /// <summary>As JSON writes it: `only-system`; null where it cannot be determined.</summary>
        public string? Word => standing switch
        {
            SourceStanding.Unknown => null,
            SourceStanding.SharesTheNeutral => "shares-the-neutral",
            SourceStanding.Separate => "separate",
            SourceStanding.OnlySystem => "only-system",
            SourceStanding.OutletsOnly => "outlets-only",
            _ => throw Unnamed.Of(standing),
        };
    }
}
