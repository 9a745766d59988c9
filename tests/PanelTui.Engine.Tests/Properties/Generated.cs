using CsCheck;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Properties;

/// <summary>Schedules by chance: sensible ones, and ones that no electrician would write.</summary>
internal static class Generated
{
    private static readonly Gen<LoadKind> Kind = Gen.Enum<LoadKind>();

    private static readonly Gen<decimal> Figure = Gen.Int[0, 600_000].Select(hundredths => hundredths / 100m);

    /// <summary>Also what only a slip of the hand writes.</summary>
    private static readonly Gen<decimal> AnyFigure = Gen.Frequency(
        (8, (IGen<decimal>)Figure), (1, Gen.OneOf(0m, -5m, 1e-28m, 1e20m, decimal.MaxValue, decimal.MinValue)));

    private static readonly Gen<string?> Group = Gen.OneOf<string?>(null, null, null, "hvac", "shop");

    /// <summary>Of the four systems.</summary>
    public static readonly Gen<PanelSystem> System = Gen.OneOf([.. PanelSystem.All]);

    /// <summary>Ordinary loads in ordinary places, on any system.</summary>
    public static readonly Gen<Schedule> Sensible =
        Gen.Select(System, CircuitFrom(Gen.Int[1, 42], Gen.Int[1, 3], LoadOf(Figure)).Array[0, 12], BasisOf(Figure)).Select(
            (system, circuits, basis) => basis with
            {
                Panel = new Panel { System = system, Spaces = 42 },
                Circuits = Sketch.Numbered(circuits),
            });

    /// <summary>Anything that the types can hold.</summary>
    public static readonly Gen<Schedule> Any = Gen.Select(
        System,
        CircuitFrom(Gen.OneOf(Gen.Int[1, 50], Gen.Const(int.MaxValue)), Gen.Int[-1, 5], LoadOf(AnyFigure)).Array[0, 12],
        BasisOf(AnyFigure),
        AnySource,
        Gen.Select(AnyFigure, AnyFigure, AnyFigure)).Select((system, circuits, basis, source, ratings) => basis with
        {
            Panel = new Panel
            {
                System = system,
                Spaces = 20,
                Bus = ratings.Item1.A,
                Main = MainDevice.BreakerOf(ratings.Item2.A),
                TandemSpaces = [17, 18],
            },
            Circuits = Sketch.Numbered(circuits),
            Source = source,
            Feeder = AnyFeeder(ratings.Item3, ratings.Item1, ratings.Item2),
            Transfer = new TransferEquipment
            {
                Rating = ratings.Item1.A,
                IntegralOcpd = ratings.Item2 > 50,
                Kind = ratings.Item3 > 50 ? TransferKind.Automatic : TransferKind.Manual,
            },
        });

    private static Feeder AnyFeeder(decimal device, decimal length, decimal heat) => new()
    {
        Ocpd = device.A,
        Conductor = heat < 100 ? null : new Conductor(ConductorSize.OfKcmil((int)(heat % 9) * 50), (ConductorMetal)(heat % 3)),
        Length = length < 50 ? null : new Feet(length),
        Insulation = heat < 1000 ? null : new Celsius(heat / 10),
        Ambient = heat < 2000 ? null : new Celsius(heat / 100),
        CurrentCarrying = heat < 3000 ? null : (int)(heat % 50),
        Conduit = heat > 4000 ? Conduit.Steel : Conduit.Pvc,
    };

    private static Gen<StandbySource> AnySource =>
        Gen.Select(Gen.Enum<SourceArrangement>(), AnyFigure.Nullable(), AnyFigure.Nullable(), AnyFigure.Nullable()).Select(
            (arrangement, continuous, perLeg, device) => new StandbySource
            {
                Kind = SourceKind.Generator,
                Arrangement = arrangement,
                Continuous = continuous?.W,
                ContinuousPerLeg = perLeg?.W,
                Ocpd = device?.A,
                Outlet = device > 3000 ? "L14-30" : "L6-30",
                Cord = device > 2000 ? new Conductor(ConductorSize.Awg(10), ConductorMetal.Copper) : null,
                SurgePerLeg = perLeg?.VA,
                Surge = continuous?.VA,
            });

    private static Gen<Schedule> BasisOf(Gen<decimal> figure) => Gen.Select(
        Gen.Enum<CodeEdition>(), Gen.Enum<DemandMethodName>(), Scenario.Array[0, 3],
        Gen.Select(figure.Nullable(), figure.Nullable(), Gen.Int[1, 400])).Select(
            (edition, method, scenarios, stated) => new Schedule
            {
                Panel = new Panel { System = PanelSystem.SplitPhase, Spaces = 42 },
                Code = new CodeBasis { Edition = edition },
                Demand = new DemandBasis
                {
                    Method = method,
                    FloorArea = stated.Item1 is { } area ? new SquareFeet(area) : null,
                    MeasuredPeak = stated.Item2?.A,
                    MeasuredDays = stated.Item3 > 365 ? null : stated.Item3,
                },
                Scenarios = [.. scenarios],
            });

    private static Gen<Scenario> Scenario => Gen.Select(Gen.Bool, Ids, Ids, Id.Null()).Select(
        (all, running, except, starting) => new Scenario
        {
            Name = "By chance",
            RunsAll = all,
            Running = [.. running],
            Except = [.. except],
            Starting = starting,
        });

    private static Gen<string> Id => Gen.Int[1, 12].Select(number => $"c{number}");

    private static Gen<string[]> Ids => Id.Array[0, 6];

    private static Gen<Circuit> CircuitFrom(Gen<int> space, Gen<int> poles, Gen<Load> load) =>
        Gen.Select(space, Gen.Enum<SpaceHalf>(), poles, load.Array[0, 3], Gen.Int[0, 9]).Select(
            (number, half, count, loads, chance) => new Circuit
            {
                Ordinal = 0,
                Space = new SpaceNumber(number, chance < 2 ? half : SpaceHalf.Whole),
                Id = chance < 7 ? $"c{number}" : null,
                Breaker = new Breaker((5 * chance).A, count),
                Loads = [.. loads],
                Wire = chance < 3 ? null : new Conductor(ConductorSize.Awg(14 - (2 * (chance % 8))), (ConductorMetal)(chance % 3)),
                Length = loads is [{ Volts: { } chosen }, ..] ? new Feet(chosen.Value) : null,
                IsSpare = chance == 9,
                Multiwire = chance is 3 or 4 or 6 ? "shared" : null,
                Tied = chance is 4 or 5,
                MovedFrom = chance == 7 ? "the old panel" : null,
                NeutralMoved = chance == 6 ? false : null,
                Places = chance % 2 == 0 ? ["kitchen", "outdoors"] : [],
                Standby = chance != 8,
            });

    private static Gen<Load> LoadOf(Gen<decimal> figure) => Gen.Select(
        Kind, Rating(figure), Gen.Select(figure.Nullable(), figure.Nullable(), Gen.Int[1, 100]),
        Gen.Select(Gen.Enum<Across>(), Gen.Int[0, 4], Group), Gen.Select(Gen.Int[0, 4], Gen.Int[1, 20], Gen.Bool, Gen.Int[0, 15])).Select(
        (kind, rating, power, place, number) => new Load
        {
            Kind = kind,
            Rating = rating,
            Running = power.Item1?.W,
            MinimumCircuitAmpacity = number.Item1 == 3 ? power.Item1?.A : null,
            MaximumOvercurrentProtection = number.Item1 > 2 ? power.Item2?.A : null,
            Volts = power.Item2 is { } volts && number.Item3 ? new Volts(volts) : null,
            PowerFactor = new PowerFactor(power.Item3 / 100m),
            Across = place.Item1,
            Pole = place.Item2,
            Group = place.Item3,
            Count = number.Item1,
            Outlets = number.Item2,
            Continuous = number.Item3,
            Start = Start.AtRunningCurrent,
            Supplementary = (number.Item4 & 1) != 0,
            Added = (number.Item4 & 2) != 0,
            Nonlinear = (number.Item4 & 12) == 0,
        });

    private static Gen<LoadRating?> Rating(Gen<decimal> figure) => Gen.Select(figure, Gen.Int[0, 4]).Select(
        (value, unit) => unit switch
        {
            0 => new LoadRating.InWatts(value.W),
            1 => new LoadRating.InVoltAmperes(value.VA),
            2 => new LoadRating.InAmperes((value / 100).A),
            3 => new LoadRating.InHorsepower((value / 400).Hp),
            _ => (LoadRating?)null,
        });
}
