using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `source`.</summary>
internal static class SourceFields
{
    public static readonly ValueField<SourceKind> Kind = new("source.kind", Choices.Source, "inverters",
        "Inverters on batteries, or a generator") { IsRequired = true };

    public static readonly ValueField<string> Location = new("source.location", Forms.Text, "North wall, outside",
        "Where it stands, as the sign at the service names it");

    public static readonly ValueField<SourceArrangement> Arrangement = new(
        "source.arrangement", Choices.Arrangement, "split",
        "split: two 120 V units 180 degrees apart; single: one unit that makes every leg; "
        + "in-phase: one 120 V unit on both legs")
    {
        Default = "single",
    };

    public static readonly ValueField<Watts> Continuous = new("source.continuous", Forms.Power, "12 kW",
        "What it may carry in all, as a generator's plate says");

    public static readonly ValueField<Watts> ContinuousPerLeg = new("source.continuous_per_leg", Forms.Power, "5 kW",
        "What one leg may carry");

    public static readonly ValueField<VoltAmperes> Surge = new("source.surge", Forms.Surge, "15 kW",
        "What it gives for a short time, in all");

    public static readonly ValueField<VoltAmperes> SurgePerLeg = new("source.surge_per_leg", Forms.Surge, "10 kW",
        "What one leg gives for a short time; watts count as volt-amperes");

    public static readonly ValueField<Seconds> SurgeTime = new("source.surge_time", Forms.SurgeTime, "2 s",
        "How long it gives its surge");

    public static readonly ValueField<string> Outlet = new("source.outlet", new OutletForm(), "14-50",
        "The NEMA WD 6 configuration of its outlet, the cord and the inlet");

    public static readonly ValueField<Conductor> Cord = new("source.cord", new ConductorForm(), "6 AWG Cu",
        "Size and metal of a conductor of the cord between outlet and inlet");

    public static readonly ValueField<Amperes> Ocpd = new("source.ocpd", Forms.Handle, "50 A",
        "The source's own breaker");

    public static readonly ValueField<SourceNeutral> Neutral = new("source.neutral", Choices.Neutral, "floating",
        "Whether its neutral is bonded to its frame");

    public static readonly ValueField<bool> Gfci = new("source.gfci", Forms.YesNo, "no",
        "Whether its outlet has ground-fault protection");

    public static readonly SectionField Battery = new("source.battery", FieldShape.Mapping,
        "What the batteries hold and what is lost on the way");

    public static readonly SectionField Charging = new("source.charging", FieldShape.Mapping,
        "What charges them, and when");

    public static readonly SectionField Solar = new("source.solar", FieldShape.Mapping,
        "What the sun gives on a day");

    public static readonly ImmutableArray<Field> All =
    [
        Kind, Location, Arrangement, Continuous, ContinuousPerLeg, Surge, SurgePerLeg, SurgeTime,
        Outlet, Cord, Ocpd, Neutral, Gfci, Battery, Charging, Solar,
    ];
}
