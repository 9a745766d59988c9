using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>What a load is, in the words that demand factors and rules go by.</summary>
public enum LoadKind
{
    Lighting,
    Receptacle,
    SmallAppliance,
    Laundry,
    Range,
    WallOven,
    Cooktop,
    Dryer,
    Appliance,
    WaterHeater,
    SpaceHeat,
    Cooling,
    HeatPump,
    Motor,
    Ev,
    Kitchen,
    Other,
}

/// <summary>Between which conductors of a multi-pole breaker a load sits.</summary>
public enum Across
{
    LineToLine,
    LineToNeutral,
}

/// <summary>One load, or several alike, on a circuit. Defaults are those of the schedule file.</summary>
public sealed record Load
{
    public required LoadKind Kind { get; init; }

    /// <summary>Nothing only for kinds that have a rating by the code: receptacle, small-appliance, laundry.</summary>
    public LoadRating? Rating { get; init; }

    /// <summary>How many alike, at least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Receptacle yokes, at least 1.</summary>
    public int Outlets { get; init; } = 1;

    /// <summary>The utilisation voltage where it is not the circuit's own.</summary>
    public Volts? Volts { get; init; }

    public Across Across { get; init; } = Across.LineToLine;

    /// <summary>The pole, counted from 1 at the top, of a line-to-neutral load on a multi-pole breaker.</summary>
    public int Pole { get; init; } = 1;

    public PowerFactor PowerFactor { get; init; } = PowerFactor.Unity;

    /// <summary>On for three hours or more.</summary>
    public bool Continuous { get; init; }

    /// <summary>The nameplate's minimum circuit ampacity.</summary>
    public Amperes? MinimumCircuitAmpacity { get; init; }

    /// <summary>The nameplate's maximum overcurrent protection.</summary>
    public Amperes? MaximumOvercurrentProtection { get; init; }

    public required Start Start { get; init; }

    /// <summary>What a soft starter takes off the starting current.</summary>
    public Percent? SoftStart { get; init; }

    /// <summary>Measured running power of one of them, used for what the source carries, never for code sizing.</summary>
    public Watts? Running { get; init; }

    /// <summary>The share of the time it is on.</summary>
    public Percent Duty { get; init; } = Percent.Whole;

    /// <summary>Loads of one group never run together.</summary>
    public string? Group { get; init; }

    /// <summary>Space heat that comes on with a heat pump.</summary>
    public bool Supplementary { get; init; }

    /// <summary>Whether its current is no sine, as of electronic or discharge lighting: on a wye it adds up on the neutral.</summary>
    public bool Nonlinear { get; init; }

    /// <summary>Whether it is new to a panel whose other loads are there already, or were measured.</summary>
    public bool Added { get; init; }
}

/// <summary>The words for a kind of load.</summary>
public static class LoadKindWords
{
    extension(LoadKind kind)
    {
        /// <summary>As the schedule file writes it: `small-appliance`.</summary>
        public string Word => Row(kind).Word;

        /// <summary>All loads of the kind as a line of a worksheet: `Small-appliance circuits`.</summary>
        public string Category => Row(kind).Category;
    }

    private static (string Word, string Category) Row(LoadKind kind) => kind switch
    {
        LoadKind.Lighting => ("lighting", "Lighting"),
        LoadKind.Receptacle => ("receptacle", "Receptacles"),
        LoadKind.SmallAppliance => ("small-appliance", "Small-appliance circuits"),
        LoadKind.Laundry => ("laundry", "Laundry circuits"),
        LoadKind.Range => ("range", "Ranges"),
        LoadKind.WallOven => ("wall-oven", "Wall ovens"),
        LoadKind.Cooktop => ("cooktop", "Cooktops"),
        LoadKind.Dryer => ("dryer", "Dryers"),
        LoadKind.Appliance => ("appliance", "Appliances"),
        LoadKind.WaterHeater => ("water-heater", "Water heaters"),
        LoadKind.SpaceHeat => ("space-heat", "Space heating"),
        LoadKind.Cooling => ("cooling", "Cooling"),
        LoadKind.HeatPump => ("heat-pump", "Heat pumps"),
        LoadKind.Motor => ("motor", "Motors"),
        LoadKind.Ev => ("ev", "Vehicle charging"),
        LoadKind.Kitchen => ("kitchen", "Kitchen equipment"),
        LoadKind.Other => ("other", "Other loads"),
        _ => throw Unnamed.Of(kind),
    };
}

/// <summary>The words for what a load is connected across.</summary>
public static class AcrossWords
{
    extension(Across across)
    {
        /// <summary>As the schedule file writes it: `line-neutral`.</summary>
        public string Word => across switch
        {
            Across.LineToLine => "line-line",
            Across.LineToNeutral => "line-neutral",
            _ => throw Unnamed.Of(across),
        };
    }
}
