using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of `feeder`.</summary>
internal static class FeederFields
{
    public static readonly ValueField<Amperes> Ocpd = new("feeder.ocpd", Forms.Handle, "60 A",
        "The breaker or fuse ahead of the feeder on the normal supply");

    public static readonly ValueField<Conductor> Conductor = new("feeder.conductor", new ConductorForm(), "6 AWG Cu",
        "Size and metal of a line conductor");

    public static readonly ValueField<Celsius> Insulation = new("feeder.insulation", Forms.Temperature, "75 C",
        "The temperature rating of its insulation");

    public static readonly ValueField<Feet> Length = new("feeder.length", Forms.Length, "45 ft",
        "Its length one way, in ft or m");

    public static readonly ValueField<Celsius> Ambient = new("feeder.ambient", Forms.Temperature, "30 C",
        "The temperature of the air around it");

    public static readonly ValueField<int> CurrentCarrying = new(
        "feeder.current_carrying", new WholeNumberForm(1, Limits.CurrentCarrying), "6",
        "How many current-carrying conductors share its raceway or cable, its own among them")
    {
        Default = "3 or fewer",
    };

    public static readonly ValueField<Conduit> Conduit = new("feeder.conduit", Choices.Conduit, "steel",
        "What it runs in: pvc also stands for cable without a metal sheath") { Default = "pvc" };

    public static readonly ImmutableArray<Field> All =
        [Ocpd, Conductor, Insulation, Length, Ambient, CurrentCarrying, Conduit];
}
