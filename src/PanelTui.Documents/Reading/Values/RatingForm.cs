using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>A nameplate rating in watts, volt-amperes, amperes or horsepower.</summary>
internal sealed class RatingForm() : ValueForm<LoadRating>("a nameplate rating in W, kW, VA, kVA, A or hp")
{
    private const string Example = "480 W";

    private static readonly Measure Watts = OnPlate(Measures.Power);
    private static readonly Measure VoltAmperes = OnPlate(Measures.ApparentPower);
    private static readonly Measure Amperes = OnPlate(Measures.LoadCurrent);
    private static readonly Measure Horsepower = OnPlate(Measures.MotorOutput);

    private static readonly ImmutableArray<Measure> Plates = [Watts, VoltAmperes, Amperes, Horsepower];

    public override string Unit => "W, kW, VA, kVA, A or hp";

    public override string Written(string text) => TypedQuantity.Written(text, Plates);

    public override ImmutableArray<string> Meant(string text) => TypedQuantity.Meant(text, Plates);

    public override Outcome<LoadRating> Read(string text) =>
        QuantityReader.Read(text, Plates, Example).Then(Rating);

    private static LoadRating Rating(Quantity quantity) => quantity switch
    {
        _ when quantity.Measure == Watts => new LoadRating.InWatts(new Watts(quantity.Value)),
        _ when quantity.Measure == VoltAmperes => new LoadRating.InVoltAmperes(new VoltAmperes(quantity.Value)),
        _ when quantity.Measure == Amperes => new LoadRating.InAmperes(new Amperes(quantity.Value)),
        _ => new LoadRating.InHorsepower(new Horsepower(quantity.Value)),
    };

    private static Measure OnPlate(Measure measure) =>
        measure with { Name = "a nameplate rating", WrittenAs = "as on the nameplate" };
}
