using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of a load.</summary>
internal static class LoadFields
{
    public static readonly ValueField<LoadKind> Kind = new("circuits[].loads[].kind", Choices.Load, "lighting",
        "What the load is, for demand factors and rules") { IsRequired = true };

    public static readonly ValueField<LoadRating> Rating = new("circuits[].loads[].rating", new RatingForm(), "480 W",
        "The nameplate's power, current or horsepower of one of them")
    {
        Default = "needed, save for receptacle, small-appliance and laundry",
    };

    public static readonly ValueField<int> Count = new(
        "circuits[].loads[].count", new WholeNumberForm(1, Limits.Count), "4",
        "How many alike") { Default = "1" };

    public static readonly ValueField<int> Outlets = new(
        "circuits[].loads[].outlets", new WholeNumberForm(1, Limits.Count), "6",
        "How many receptacle yokes, at 180 VA each") { Default = "1" };

    public static readonly ValueField<Volts> Volts = new("circuits[].loads[].volts", Forms.Voltage, "240 V",
        "The voltage it works at") { Default = "line to neutral on one pole, line to line on more" };

    public static readonly ValueField<Across> Across = new("circuits[].loads[].across", Choices.Across, "line-neutral",
        "Between which conductors of a breaker of several poles it sits") { Default = "line-line" };

    public static readonly ValueField<int> Pole = new("circuits[].loads[].pole", new WholeNumberForm(1, 3), "2",
        "The pole, from the top, of a line-neutral load on a breaker of several poles") { Default = "1" };

    public static readonly ValueField<PowerFactor> PowerFactor = new(
        "circuits[].loads[].pf", new PowerFactorForm(), "0.85",
        "Its power factor: volt-amperes are watts divided by it") { Default = "1" };

    public static readonly ValueField<bool> Continuous = new("circuits[].loads[].continuous", Forms.YesNo, "yes",
        "Whether it is on for three hours or more") { Default = "no, but yes for kind ev" };

    public static readonly ValueField<Amperes> Mca = new("circuits[].loads[].mca", Forms.Current, "18 A",
        "The nameplate's minimum circuit ampacity");

    public static readonly ValueField<Amperes> Mocp = new("circuits[].loads[].mocp", Forms.Current, "30 A",
        "The nameplate's maximum overcurrent protection");

    public static readonly ValueField<Start> Start = new("circuits[].loads[].start", new StartForm(), "code G",
        "How it starts: times its full-load current, a code letter of Table 430.7(B), or a current")
    {
        Default = "6x for motor, cooling and heat-pump, else 1x",
    };

    public static readonly ValueField<Percent> SoftStart = new("circuits[].loads[].soft_start", Forms.Share, "60 %",
        "How much of its starting current a soft starter takes away");

    public static readonly ValueField<Watts> Running = new("circuits[].loads[].running", Forms.Power, "1500 W",
        "The measured power of one of them, for what the source carries, never for code sizing")
    {
        Default = "from rating",
    };

    public static readonly ValueField<Percent> Duty = new("circuits[].loads[].duty", Forms.ShareOrZero, "55 %",
        "The share of the time it is on, for energy") { Default = "100 %" };

    public static readonly ValueField<string> Group = new("circuits[].loads[].group", Forms.GroupName, "hvac",
        "A name that loads share which never run together: only the largest counts");

    public static readonly ValueField<bool> Supplementary = new("circuits[].loads[].supplementary", Forms.YesNo, "yes",
        "Whether it is space heat that comes on with a heat pump") { Default = "no" };

    public static readonly ValueField<bool> Nonlinear = new("circuits[].loads[].nonlinear", Forms.YesNo, "yes",
        "Whether its current is no sine, as of electronic or discharge lighting, which a neutral of a wye carries in full")
    {
        Default = "no",
    };

    public static readonly ValueField<bool> Added = new("circuits[].loads[].added", Forms.YesNo, "yes",
        "Whether it is new beside loads that are there already, for dwelling-existing and measured") { Default = "no" };

    public static readonly ImmutableArray<Field> All =
    [
        Kind, Rating, Count, Outlets, Volts, Across, Pole, PowerFactor, Continuous, Mca, Mocp,
        Start, SoftStart, Running, Duty, Group, Supplementary, Nonlinear, Added,
    ];
}
