using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The physical quantities of the format.</summary>
internal static class Measures
{
    private static readonly MeasuringUnit Amperes = MeasuringUnit.Base("A");
    private static readonly MeasuringUnit Kiloamperes = MeasuringUnit.Thousand("kA");
    private static readonly MeasuringUnit Watts = MeasuringUnit.Base("W");
    private static readonly MeasuringUnit Kilowatts = MeasuringUnit.Thousand("kW");
    private static readonly MeasuringUnit Voltamperes = MeasuringUnit.Base("VA");
    private static readonly MeasuringUnit Kilovoltamperes = MeasuringUnit.Thousand("kVA");

    public static readonly Measure Current = new("a current", [Amperes, Kiloamperes], Limits.Current) { Implied = Amperes };

    public static readonly Measure Handle = Current with { WrittenAs = "as on the handle" };

    public static readonly Measure LoadCurrent = Current with { Units = [Amperes] };

    public static readonly Measure FaultCurrent = new("a current", [Amperes, Kiloamperes], Limits.FaultCurrent);

    public static readonly Measure LockedRotor = new("a current", [Amperes], Limits.LockedRotorCurrent);

    public static readonly Measure Power = new("a power", [Watts, Kilowatts], Limits.Power);

    public static readonly Measure ApparentPower =
        new("an apparent power", [Voltamperes, Kilovoltamperes], Limits.Power);

    /// <summary>What a plate may give as either: watts are taken as volt-amperes at unity power factor.</summary>
    public static readonly Measure SurgePower =
        new("a power", [Watts, Kilowatts, Voltamperes, Kilovoltamperes], Limits.Power);

    public static readonly Measure MotorOutput =
        new("a motor output", [MeasuringUnit.Base("hp")], Limits.Horsepower) { HasFractions = true };

    public static readonly Measure Voltage = new("a voltage", [MeasuringUnit.Base("V")], Limits.Voltage);

    public static readonly Measure Length = new(
        "a length",
        [MeasuringUnit.Base("ft"), new("m", number => NineDigits.Of(UnitsNet.Length.FromMeters((double)number).Feet))],
        Limits.Length) { HasThousands = false };

    public static readonly Measure Area = new(
        "an area",
        [
            MeasuringUnit.Base("ft2"),
            new("m2", number => NineDigits.Of(UnitsNet.Area.FromSquareMeters((double)number).SquareFeet)),
        ],
        Limits.Area);

    public static readonly Measure Temperature = new(
        "a temperature",
        [
            MeasuringUnit.Base("C"),
            new("F", number => NineDigits.Of(
                UnitsNet.Temperature.FromDegreesFahrenheit((double)number).DegreesCelsius)),
        ],
        Limits.Temperature) { Least = Limits.Coldest };

    public static readonly Measure Energy =
        new("an energy", [MeasuringUnit.Base("Wh"), MeasuringUnit.Thousand("kWh")], Limits.Energy);

    public static readonly Measure Share = new("a percentage", [MeasuringUnit.Base("%")], Percent.Whole.Value);

    public static readonly Measure SurgeTime = new("a time", [MeasuringUnit.Base("s")], Limits.SurgeTime);

    public static readonly Measure SunHours = new("a time", [MeasuringUnit.Base("h")], Limits.SunHours) { Least = 0 };
}
