using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `demand`.</summary>
internal static class DemandFields
{
    public static readonly ValueField<DemandMethodName> Method = new("demand.method", Choices.Method, "non-dwelling",
        "The method of the calculated load") { Default = "selected" };

    public static readonly ValueField<SquareFeet> FloorArea = new("demand.floor_area", Forms.Area, "1500 ft2",
        "The floor area that the dwelling methods count lighting by, in ft2 or m2");

    public static readonly ValueField<Amperes> MeasuredPeak = new("demand.measured_peak", Forms.Current, "41 A",
        "The highest current measured on the busier leg, for the method measured");

    public static readonly ValueField<int> MeasuredDays = new(
        "demand.measured_days", new WholeNumberForm(1, Limits.MeasuredDays), "30",
        "Over how many days that current was measured");

    public static readonly ImmutableArray<Field> All = [Method, FloorArea, MeasuredPeak, MeasuredDays];
}
