using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>The starting power of a load from what its nameplate or its schedule says.</summary>
public static class StartReckoning
{
    private const decimal Root3 = 1.7320508075688772935274463415m;

    /// <summary>Six times: a motor started across the line; a start that is stated otherwise is the schedule's own.</summary>
    private const decimal Usual = 6;

    public static StartBasis Of(PlacedLoad load, CodeEdition edition) => load.Load.Start switch
    {
        Start.CodeLetter letter => ByLetter(letter.Letter, load, edition),
        Start.Current current => ByCurrent(current.LockedRotor, load),
        Start.Times times => ByMultiple(times.Factor, load),
        _ => ByMultiple(1, load),
    };

    /// <summary>The full-load current of one of those alike.</summary>
    public static Amperes FullLoad(PlacedLoad load) => CurrentOf(load.Size.Each, load);

    /// <summary>What so much power is as a current in the conductors of this load.</summary>
    public static Amperes CurrentOf(VoltAmperes power, PlacedLoad load)
    {
        var volts = VoltsOf(load);
        return volts > 0 ? new(Bounded.Quotient(power.Value, volts)) : Amperes.Zero;
    }

    private static StartBasis ByLetter(char letter, PlacedLoad load, CodeEdition edition)
    {
        if (LockedRotor.Find(letter) is not { } row || load.Load.Rating is not LoadRating.InHorsepower motor)
            return ByMultiple(Usual, load) with { Words = $"code {letter} needs a rating in hp; 6x of full load taken", Cite = Citation.CommonPractice };
        var power = Bounded.Product(row.Reckoned * 1000, motor.Output.Value);
        var band = row.Most is { } most ? $"{Shown.Exactly(row.Least)} to {Shown.Exactly(most)}" : $"{Shown.Exactly(row.Least)} and more";
        return new StartBasis(new(power), $"code {letter}, {band} kVA/hp x {motor.Output}", LockedRotor.Section.In(edition));
    }

    private static StartBasis ByCurrent(Amperes lockedRotor, PlacedLoad load) => new(
        new(Bounded.Product(lockedRotor.Value, VoltsOf(load))), $"locked-rotor {lockedRotor} as stated", Citation.Schedule);

    private static StartBasis ByMultiple(decimal factor, PlacedLoad load) => new(
        new(Bounded.Product(load.Size.Each.Value, factor)),
        $"{Shown.Exactly(factor)}x of full load, {Shown.Rounded(FullLoad(load).Value, 1, "A")}",
        factor == Usual ? Citation.CommonPractice : Citation.Schedule);

    private static decimal VoltsOf(PlacedLoad load) => Bounded.Product(load.Size.Volts.Value, load.Placement.IsThreePhase ? Root3 : 1);
}
