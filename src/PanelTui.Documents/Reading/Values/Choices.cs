using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The words of the format and what they mean.</summary>
internal static class Choices
{
    public static readonly ChoiceForm<PanelSystem> System =
        new([.. PanelSystem.All.Select(system => (system.Name, system))]) { Guesses = false };

    public static readonly ChoiceForm<CodeEdition> Edition =
        new(("2017", CodeEdition.Nec2017), ("2020", CodeEdition.Nec2020), ("2023", CodeEdition.Nec2023));

    public static readonly ChoiceForm<Occupancy> Occupancy =
        new(("dwelling", Engine.Panels.Occupancy.Dwelling), ("non-dwelling", Engine.Panels.Occupancy.NonDwelling));

    public static readonly ChoiceForm<DemandMethodName> Method = new(
        ("dwelling-standard", DemandMethodName.DwellingStandard),
        ("dwelling-optional", DemandMethodName.DwellingOptional),
        ("dwelling-existing", DemandMethodName.DwellingExisting),
        ("non-dwelling", DemandMethodName.NonDwelling),
        ("measured", DemandMethodName.Measured),
        ("selected", DemandMethodName.Selected));

    public static readonly ChoiceForm<TransferKind> Transfer = new(
        ("manual", TransferKind.Manual), ("automatic", TransferKind.Automatic), ("interlock", TransferKind.Interlock));

    public static readonly ChoiceForm<SourceKind> Source =
        new(("inverters", SourceKind.Inverters), ("generator", SourceKind.Generator));

    public static readonly ChoiceForm<SourceArrangement> Arrangement = new(
        ("split", SourceArrangement.Split),
        ("single", SourceArrangement.OneUnit),
        ("in-phase", SourceArrangement.InPhase));

    public static readonly ChoiceForm<SourceNeutral> Neutral =
        new(("floating", SourceNeutral.Floating), ("bonded", SourceNeutral.Bonded));

    public static readonly ChoiceForm<Conduit> Conduit =
        new(("pvc", Engine.Panels.Conduit.Pvc), ("steel", Engine.Panels.Conduit.Steel));

    public static readonly ChoiceForm<ChargingFrom> Charging =
        new(("grid", ChargingFrom.Grid), ("generator", ChargingFrom.Generator), ("solar", ChargingFrom.Solar));

    public static readonly ChoiceForm<Protection> Protection = new(
        ("standard", Engine.Panels.Protection.Standard),
        ("gfci", Engine.Panels.Protection.Gfci),
        ("afci", Engine.Panels.Protection.Afci),
        ("dual-function", Engine.Panels.Protection.DualFunction));

    public static readonly ChoiceForm<Across> Across =
        new(("line-line", Engine.Panels.Across.LineToLine), ("line-neutral", Engine.Panels.Across.LineToNeutral));

    public static readonly ChoiceForm<LoadKind> Load = new(
        ("lighting", LoadKind.Lighting), ("receptacle", LoadKind.Receptacle),
        ("small-appliance", LoadKind.SmallAppliance), ("laundry", LoadKind.Laundry),
        ("range", LoadKind.Range), ("wall-oven", LoadKind.WallOven), ("cooktop", LoadKind.Cooktop),
        ("dryer", LoadKind.Dryer), ("appliance", LoadKind.Appliance), ("water-heater", LoadKind.WaterHeater),
        ("space-heat", LoadKind.SpaceHeat), ("cooling", LoadKind.Cooling), ("heat-pump", LoadKind.HeatPump),
        ("motor", LoadKind.Motor), ("ev", LoadKind.Ev), ("kitchen", LoadKind.Kitchen), ("other", LoadKind.Other));
}
