using System.Collections.Immutable;

namespace PanelTui.Beginning;

/// <summary>The list that a new schedule is made from.</summary>
/// <remarks>Every figure is common practice, no source: to be replaced by what the nameplate says.</remarks>
internal static class UsualLoads
{
    public const string Remark = "common practice, no source";

    public static readonly ImmutableArray<UsualLoad> All =
    [
        new("Hall and stair lights", "lights", "15 A", 1, "kind: lighting, rating: 300 W", 2.5m),
        new("General receptacles", "receptacles", "20 A", 1, "kind: receptacle, outlets: 4", 6),
        new("Kitchen refrigerator", "fridge", "20 A", 1, "kind: appliance, rating: 6 A, running: 180 W, duty: 35 %", 6),
        new("Chest freezer", "freezer", "15 A", 1, "kind: appliance, rating: 5 A, running: 150 W, duty: 35 %", 5),
        new("Kitchen counter receptacles", "counter", "20 A", 1, "kind: small-appliance", 12.5m),
        new("Microwave oven", "microwave", "20 A", 1, "kind: appliance, rating: 1500 W", 12.5m),
        new("Furnace blower and controls", "furnace", "15 A", 1, "kind: motor, rating: 1/2 hp, running: 500 W, duty: 50 %", 9.8m),
        new("Sump pump", "sump-pump", "15 A", 1, "kind: motor, rating: 1/3 hp, running: 500 W, duty: 20 %", 7.2m),
        new("Well pump", "well-pump", "20 A", 2, "kind: motor, rating: 1 hp, running: 1100 W, duty: 10 %", 8),
        new("Water heater", "water-heater", "30 A", 2, "kind: water-heater, rating: 4500 W, duty: 15 %", 18.75m),
        new("Window air conditioner", "window-ac", "20 A", 1, "kind: cooling, rating: 9 A, running: 900 W, duty: 60 %", 9),
        new("Network and telephone", "network", "15 A", 1, "kind: other, rating: 60 W, continuous: yes", 0.5m),
        new("Washing machine", "washer", "20 A", 1, "kind: laundry", 12.5m),
        new("Garage door opener", "garage-door", "20 A", 1, "kind: motor, rating: 1/2 hp, running: 500 W, duty: 1 %", 9.8m),
        new("Cold room unit", "cold-room", "20 A", 2, "kind: motor, rating: 2 hp, running: 1500 W, duty: 55 %", 12),
    ];

    /// <summary>The first that a person may call so; nothing for no words.</summary>
    public static UsualLoad? Called(string words) =>
        words.Trim() is { Length: > 0 } name ? All.FirstOrDefault(load => load.IsCalled(name)) : null;
}
