using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The forms that several keys share.</summary>
internal static class Forms
{
    public static readonly ValueForm<Amperes> Current = Of(Measures.Current, "60 A", value => new Amperes(value));

    public static readonly ValueForm<Amperes> Handle = Of(
        Measures.Handle, "20 A", value => new Amperes(value), [.. StandardRatings.In(CodeEdition.Nec2023).Select(rating => $"{rating}")]);

    public static readonly ValueForm<Amperes> FaultCurrent =
        Of(Measures.FaultCurrent, "10 kA", value => new Amperes(value));

    public static readonly ValueForm<Watts> Power = Of(Measures.Power, "1500 W", value => new Watts(value));

    public static readonly ValueForm<Watts> PowerOrZero = Of(Measures.Power.OrZero, "60 W", value => new Watts(value));

    public static readonly ValueForm<VoltAmperes> Surge =
        Of(Measures.SurgePower, "10 kW", value => new VoltAmperes(value));

    public static readonly ValueForm<Volts> Voltage = Of(Measures.Voltage, "240 V", value => new Volts(value), ["120 V", "208 V", "240 V"]);

    public static readonly ValueForm<Feet> Length = Of(Measures.Length, "60 ft", value => new Feet(value));

    public static readonly ValueForm<SquareFeet> Area = Of(Measures.Area, "1500 ft2", value => new SquareFeet(value));

    public static readonly ValueForm<Celsius> Temperature =
        Of(Measures.Temperature, "75 C", value => new Celsius(value), ["60 C", "75 C", "90 C"]);

    public static readonly ValueForm<WattHours> Energy = Of(Measures.Energy, "4.8 kWh", value => new WattHours(value));

    public static readonly ValueForm<Percent> Share = Of(Measures.Share, "88 %", value => new Percent(value));

    public static readonly ValueForm<Percent> ShareOrZero =
        Of(Measures.Share.OrZero, "35 %", value => new Percent(value));

    public static readonly ValueForm<Seconds> SurgeTime = Of(Measures.SurgeTime, "2 s", value => new Seconds(value));

    public static readonly ValueForm<bool> YesNo = new YesNoForm();

    public static readonly ValueForm<string> Text = new FreeTextForm("text");

    public static readonly ValueForm<string> GroupName =
        new FreeTextForm("a name that its members share", Limits.IdLength);

    public static readonly ValueForm<string> Reason = new ReasonForm();

    public static readonly ValueForm<string> Id = new IdForm();

    private static QuantityForm<T> Of<T>(Measure measure, string example, Func<decimal, T> make, ImmutableArray<string> offered = default)
        where T : notnull =>
        new(measure, example, make, offered);
}
