using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of a circuit.</summary>
internal static class CircuitFields
{
    public static readonly ValueField<string> Id = new("circuits[].id", Forms.Id, "sort-lights",
        "A stable name for scenarios, comparisons and merges, one for each circuit");

    public static readonly ValueField<SpaceNumber> Space = new("circuits[].space", new SpaceForm(), "1",
        "The top space that its breaker takes; the rest follow from the poles") { IsRequired = true };

    public static readonly ValueField<string> Name = new("circuits[].name", Forms.Text, "Sorting line lights",
        "What it feeds, as the directory in the door reads");

    public static readonly ValueField<Amperes> Breaker = new("circuits[].breaker", Forms.Handle, "15 A",
        "The rating on the breaker's handle") { IsRequired = true };

    public static readonly ValueField<int> Poles = new("circuits[].poles", new WholeNumberForm(1, 3), "2",
        "How many poles the breaker has") { Default = "1" };

    public static readonly ValueField<Protection> Protection = new(
        "circuits[].protection", Choices.Protection, "dual-function",
        "What the breaker watches besides overcurrent") { Default = "standard" };

    public static readonly ValueField<Conductor> Wire = new("circuits[].wire", new ConductorForm(), "14 AWG Cu",
        "Size and metal of its wire");

    public static readonly ValueField<Feet> Length = new("circuits[].length", Forms.Length, "60 ft",
        "The way from the panel to the farthest load, in ft or m");

    public static readonly ValueField<bool> Spare = new("circuits[].spare", Forms.YesNo, "yes",
        "Whether the breaker is there and feeds nothing yet") { Default = "no" };

    public static readonly ValueField<string> Multiwire = new("circuits[].multiwire", Forms.GroupName, "bench",
        "The name under which circuits share one neutral");

    public static readonly ValueField<bool> Tied = new("circuits[].tied", Forms.YesNo, "yes",
        "Whether the handles of one-pole breakers are tied together") { Default = "no" };

    public static readonly ValueField<bool> Fixed = new("circuits[].fixed", Forms.YesNo, "yes",
        "Whether it stays in its space when a better balance is looked for: back-fed, interlocked, wires too short")
    {
        Default = "no",
    };

    public static readonly ValueField<bool> Standby = new("circuits[].standby", Forms.YesNo, "no",
        "Whether it runs on the standby source where a scenario does not say otherwise") { Default = "yes" };

    public static readonly ValueField<int> Priority = new(
        "circuits[].priority", new WholeNumberForm(1, Limits.Priority), "2",
        "Its turn when the source is asked for too much: the lowest number sheds first")
    {
        Default = "after every circuit that has a number",
    };

    public static readonly ValueField<string> MovedFrom = new(
        "circuits[].moved_from", Forms.Text, "Barn panel, space 12",
        "The panel it came from");

    public static readonly ValueField<bool> NeutralMoved = new("circuits[].neutral_moved", Forms.YesNo, "yes",
        "Whether its neutral came along");

    public static readonly ValueField<DateOnly> Verified = new("circuits[].verified", new DateForm(), "2026-11-25",
        "The day someone last checked it at the panel");

    public static readonly ListField<string> Places = new("circuits[].places", new PlaceForm(), "[garage, outdoors]",
        "Where its outlets are, for the GFCI and AFCI rules");

    public static readonly SectionField Loads = new("circuits[].loads", FieldShape.ListOfMappings,
        "What hangs on it");

    public static readonly ImmutableArray<Field> All =
    [
        Id, Space, Name, Breaker, Poles, Protection, Wire, Length, Spare, Multiwire, Tied, Fixed, Standby, Priority,
        MovedFrom, NeutralMoved, Verified, Places, Loads,
    ];
}
