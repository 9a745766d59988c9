using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>A configuration of plug, receptacle and inlet: what it is rated, and whether it has a neutral.</summary>
/// <remarks>The volts stand as printed on it; poles count the blades that carry current, wires the ground too.</remarks>
public sealed record OutletConfiguration(
    string Name, Amperes Rating, string Volts, int Poles, int Wires, bool HasNeutral, Standing Standing = Standing.Seen)
{
    public Citation Cite => new("NEMA", null, "WD 6", Standing);
}

/// <summary>Configurations of NEMA WD 6 that standby sources, cords and inlets come with.</summary>
public static class OutletConfigurations
{
    public static readonly Citation Cite = new("NEMA", null, "WD 6", Standing.Seen);

    public static readonly ImmutableArray<OutletConfiguration> All =
    [
        new("5-15", 15.A, "125", 2, 3, HasNeutral: true),
        new("5-20", 20.A, "125", 2, 3, HasNeutral: true),
        new("TT-30", 30.A, "125", 2, 3, HasNeutral: true),
        new("L5-20", 20.A, "125", 2, 3, HasNeutral: true, Standing.FromMemory),
        new("L5-30", 30.A, "125", 2, 3, HasNeutral: true),
        new("5-30", 30.A, "125", 2, 3, HasNeutral: true),
        new("L6-20", 20.A, "250", 2, 3, HasNeutral: false, Standing.FromMemory),
        new("L6-30", 30.A, "250", 2, 3, HasNeutral: false),
        new("6-50", 50.A, "250", 2, 3, HasNeutral: false),
        new("L14-20", 20.A, "125/250", 3, 4, HasNeutral: true, Standing.FromMemory),
        new("L14-30", 30.A, "125/250", 3, 4, HasNeutral: true),
        new("14-30", 30.A, "125/250", 3, 4, HasNeutral: true),
        new("14-50", 50.A, "125/250", 3, 4, HasNeutral: true),
        new("10-30", 30.A, "125/250", 3, 3, HasNeutral: true),
        new("10-50", 50.A, "125/250", 3, 3, HasNeutral: true),
        new("L21-30", 30.A, "120/208", 4, 5, HasNeutral: true, Standing.FromMemory),
    ];

    /// <summary>Nothing for a configuration that is not here.</summary>
    public static OutletConfiguration? Find(string? name)
    {
        foreach (var one in All)
        {
            if (one.Name == name)
                return one;
        }
        return null;
    }
}
