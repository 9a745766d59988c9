using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>A load in its place: how much it is, and between which conductors.</summary>
public sealed record PlacedLoad(Circuit Circuit, Load Load, LoadSize Size, LegLoads Legs)
{
    public Placement Placement => Size.Placement;

    /// <summary>A motor to the code's motor articles: by its kind, or because its plate says hp.</summary>
    public bool IsMotor =>
        Load.Kind is LoadKind.Motor or LoadKind.Cooling or LoadKind.HeatPump || Load.Rating is LoadRating.InHorsepower;

    /// <summary>What it takes from the source: as measured where that is known, else its VA x pf.</summary>
    public Watts RunningWatts => Load.Running is { } each
        ? new Watts(Bounded.Product(each.Value, Load.Count))
        : Size.Power.At(Load.PowerFactor);

    /// <summary>The running power with its share of reactive power, in its place.</summary>
    public LegLoads RunningLegs => Load.Running is null
        ? Legs
        : Placement.Put(new VoltAmperes(Bounded.Quotient(RunningWatts.Value, Load.PowerFactor.Value)));

    /// <summary>One of those alike, where one motor of several is asked for.</summary>
    public LegLoads OneOfThem => Load.Count == 1 ? Legs : Placement.Put(Size.Each);

    public string Label => $"{Circuit.Called}: {Load.Kind.Word}, {Size.Reckoning}, {Placement}";

    /// <summary>Every load of the schedule, in the order of the file. A spare breaker connects nothing.</summary>
    public static ImmutableArray<PlacedLoad> AllOf(Schedule schedule) =>
    [
        .. from circuit in schedule.Circuits
           where !circuit.IsSpare
           from load in circuit.Loads
           select Of(circuit, load, schedule.Panel.System),
    ];

    public static PlacedLoad Of(Circuit circuit, Load load, PanelSystem system)
    {
        var size = LoadSize.Of(load, circuit, system);
        return new PlacedLoad(circuit, load, size, size.Placement.Put(size.Power));
    }

    /// <summary>The step that says how its VA came about.</summary>
    public DerivationStep Step(CodeEdition edition) =>
        new(Label, Size.Power.Value, "VA", Size.CiteIn(edition), [Circuit.Space]);
}
