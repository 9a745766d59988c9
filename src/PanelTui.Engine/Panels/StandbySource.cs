using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

public enum SourceKind
{
    Inverters,
    Generator,
}

/// <summary>How a source makes the two legs.</summary>
public enum SourceArrangement
{
    /// <summary>Two 120 V units 180 degrees apart, each limited on its own.</summary>
    Split,

    /// <summary>One unit that makes all legs and the neutral, such as a 120/240 V set.</summary>
    OneUnit,

    /// <summary>One 120 V unit on both legs: the legs are in phase, and their currents add on the neutral.</summary>
    InPhase,
}

public enum SourceNeutral
{
    Floating,
    Bonded,
}

/// <summary>The generator or inverters behind the transfer equipment.</summary>
public sealed record StandbySource
{
    public required SourceKind Kind { get; init; }

    /// <summary>Where it stands, in the user's own words: the sign at the service names it.</summary>
    public string Location { get; init; } = "";

    public SourceArrangement Arrangement { get; init; } = SourceArrangement.OneUnit;

    /// <summary>What it may carry in all, as a generator's plate says.</summary>
    public Watts? Continuous { get; init; }

    /// <summary>What one leg may carry.</summary>
    public Watts? ContinuousPerLeg { get; init; }

    /// <summary>What it may give for <see cref="SurgeTime"/>, in all.</summary>
    public VoltAmperes? Surge { get; init; }

    public VoltAmperes? SurgePerLeg { get; init; }

    public Seconds? SurgeTime { get; init; }

    /// <summary>The NEMA WD 6 configuration of outlet, cord and inlet, e.g. `14-50`.</summary>
    public string? Outlet { get; init; }

    /// <summary>A conductor of the cord between outlet and inlet.</summary>
    public Conductor? Cord { get; init; }

    /// <summary>The source's own breaker.</summary>
    public Amperes? Ocpd { get; init; }

    public SourceNeutral? Neutral { get; init; }

    public bool? Gfci { get; init; }

    public Battery? Battery { get; init; }

    public Charging? Charging { get; init; }

    public Solar? Solar { get; init; }
}

/// <summary>The words for a kind of source.</summary>
public static class SourceKindWords
{
    extension(SourceKind kind)
    {
        /// <summary>As the schedule file writes it: `generator`.</summary>
        public string Word => Row(kind).Word;

        /// <summary>As a sheet names it: `Generator`.</summary>
        public string Title => Row(kind).Title;

        /// <summary>As a sign names it: `INVERTERS WITH BATTERIES`.</summary>
        public string Sign => Row(kind).Sign;
    }

    private static (string Word, string Title, string Sign) Row(SourceKind kind) => kind switch
    {
        SourceKind.Inverters => ("inverters", "Inverters", "INVERTERS WITH BATTERIES"),
        SourceKind.Generator => ("generator", "Generator", "GENERATOR"),
        _ => throw Unnamed.Of(kind),
    };
}

/// <summary>The words for how a source makes the two legs.</summary>
public static class SourceArrangementWords
{
    extension(SourceArrangement arrangement)
    {
        /// <summary>As the schedule file writes it: `in-phase`.</summary>
        public string Word => arrangement switch
        {
            SourceArrangement.Split => "split",
            SourceArrangement.OneUnit => "single",
            SourceArrangement.InPhase => "in-phase",
            _ => throw Unnamed.Of(arrangement),
        };
    }
}

/// <summary>The words for the neutral of a source.</summary>
public static class SourceNeutralWords
{
    extension(SourceNeutral neutral)
    {
        /// <summary>As the schedule file writes it: `floating`.</summary>
        public string Word => neutral switch
        {
            SourceNeutral.Floating => "floating",
            SourceNeutral.Bonded => "bonded",
            _ => throw Unnamed.Of(neutral),
        };
    }
}
