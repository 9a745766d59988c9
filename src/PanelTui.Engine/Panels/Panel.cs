using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>The panelboard itself, without its circuits.</summary>
public sealed record Panel
{
    public string Name { get; init; } = "";

    public string Location { get; init; } = "";

    /// <summary>What feeds it on the normal supply, in the user's own words.</summary>
    public string FedFrom { get; init; } = "";

    /// <summary>The revision of the schedule, as its owner counts them.</summary>
    public string Revision { get; init; } = "";

    /// <summary>When the schedule was last revised.</summary>
    public DateOnly? Revised { get; init; }

    /// <summary>Who checked the circuits at the panel.</summary>
    public string VerifiedBy { get; init; } = "";

    public required PanelSystem System { get; init; }

    /// <summary>Physical breaker spaces, 1 to <see cref="SpaceNumber.Most"/>.</summary>
    public required int Spaces { get; init; }

    public Amperes? Bus { get; init; }

    public MainDevice? Main { get; init; }

    /// <summary>Where the listing allows tandem breakers.</summary>
    public ImmutableArray<int> TandemSpaces { get; init; } = [];

    /// <summary>Available fault current at the panel.</summary>
    public Amperes? FaultCurrent { get; init; }

    /// <summary>The lowest interrupting rating of its breakers.</summary>
    public Amperes? Interrupting { get; init; }

    public Celsius? Terminals { get; init; }

    /// <summary>Whether neutral and ground are bonded here; nothing where nobody wrote it down.</summary>
    public bool? NeutralBonded { get; init; }

    /// <summary>Whether a space of this number exists; a half only where tandems are allowed is a rule's business.</summary>
    public bool Has(SpaceNumber space) => space.Number <= Spaces;
}

/// <summary>What disconnects the panel: a main breaker, or lugs alone.</summary>
public abstract record MainDevice
{
    /// <summary>Main lugs only: whatever feeds the panel protects it.</summary>
    public static readonly MainDevice Lugs = new LugsOnly();

    private MainDevice()
    {
    }

    public static MainDevice BreakerOf(Amperes rating) => new MainBreaker(rating);

    /// <summary>The main breaker's rating; nothing for lugs.</summary>
    public Amperes? Rating => this is MainBreaker main ? main.Handle : null;

    public override string ToString() => Rating is { } rating ? $"{rating}" : "lugs";

    private sealed record LugsOnly : MainDevice
    {
        public override string ToString() => base.ToString();
    }

    private sealed record MainBreaker(Amperes Handle) : MainDevice
    {
        public override string ToString() => base.ToString();
    }
}
