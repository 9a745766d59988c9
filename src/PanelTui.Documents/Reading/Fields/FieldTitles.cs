using System.Collections.Frozen;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>What the keys are called on a screen, where the key itself, without its underscores, would not do.</summary>
internal static class FieldTitles
{
    private static readonly FrozenDictionary<string, string> ByPath = new Dictionary<string, string>
    {
        ["code"] = "Code in force",
        ["demand"] = "Calculated load",
        ["transfer"] = "Transfer equipment",
        ["source"] = "Standby source",
        ["accepted"] = "Accepted findings",
        ["panel.tandem_spaces"] = "Spaces for tandems",
        ["panel.interrupting"] = "Interrupting rating",
        ["panel.terminals"] = "Terminals marked for",
        ["panel.neutral_bonded"] = "Neutral bonded here",
        ["feeder.ocpd"] = "Breaker or fuse",
        ["feeder.conduit"] = "Runs in",
        ["feeder.current_carrying"] = "Conductors in it",
        ["transfer.integral_ocpd"] = "Breaker of its own",
        ["transfer.switches_neutral"] = "Switches the neutral",
        ["transfer.load_management"] = "Sheds loads",
        ["source.continuous"] = "Continuous, in all",
        ["source.continuous_per_leg"] = "Continuous, each leg",
        ["source.surge"] = "Surge, in all",
        ["source.surge_per_leg"] = "Surge, each leg",
        ["source.surge_time"] = "Surge lasts",
        ["source.outlet"] = "Outlet, cord and inlet",
        ["source.cord"] = "Conductor of the cord",
        ["source.ocpd"] = "Its own breaker",
        ["source.gfci"] = "GFCI at its outlet",
        ["source.battery.usable"] = "Battery, usable",
        ["source.battery.reserve"] = "Battery, kept back",
        ["source.battery.efficiency"] = "Battery, efficiency",
        ["source.battery.idle"] = "Battery, idle draw",
        ["source.charging.from"] = "Charging from",
        ["source.charging.power"] = "Charging draws",
        ["source.charging.starts_at"] = "Charging starts at",
        ["source.charging.stops_at"] = "Charging stops at",
        ["source.solar.peak"] = "Solar, peak",
        ["source.solar.sun_hours"] = "Solar, sun hours",
        ["source.solar.hourly"] = "Solar, hour by hour",
        ["circuits[].space"] = "Top space",
        ["circuits[].multiwire"] = "Shares a neutral as",
        ["circuits[].tied"] = "Handles tied",
        ["circuits[].standby"] = "Runs on standby",
        ["circuits[].verified"] = "Checked at the panel",
        ["circuits[].places"] = "Where its outlets are",
        ["circuits[].loads[].count"] = "How many alike",
        ["circuits[].loads[].outlets"] = "Receptacle yokes",
        ["circuits[].loads[].pf"] = "Power factor",
        ["circuits[].loads[].continuous"] = "On 3 h or more",
        ["circuits[].loads[].mca"] = "Plate MCA",
        ["circuits[].loads[].mocp"] = "Plate MOCP",
        ["circuits[].loads[].start"] = "Starts at",
        ["circuits[].loads[].running"] = "Measured running",
        ["circuits[].loads[].group"] = "Never with others of",
        ["circuits[].loads[].supplementary"] = "With a heat pump",
        ["circuits[].loads[].added"] = "New beside the others",
        ["scenarios[].except"] = "Not running",
        ["scenarios[].starting"] = "Starts last",
        ["accepted[].because"] = "Reason",
    }.ToFrozenDictionary();

    public static string Of(Field field)
    {
        if (ByPath.GetValueOrDefault(field.Path) is { } title) return title;
        var words = field.Key.Replace('_', ' ');
        return char.ToUpperInvariant(words[0]) + words[1..];
    }
}
