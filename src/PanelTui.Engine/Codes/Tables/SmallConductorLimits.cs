using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Quantities.ConductorSize;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row: the largest device for a small conductor, from an edition on.</summary>
public sealed record SmallConductorRow(ConductorSize Size, ConductorMetal Metal, Amperes Most, CodeEdition Since, Standing Standing);

/// <summary>Largest overcurrent device for small conductors, whatever their ampacity.</summary>
/// <remarks>It does not hold for what 240.4(G) names, such as motors and air conditioners.</remarks>
public static class SmallConductorLimits
{
    public static readonly CodeSection Section = Nec.Section("240.4(D)");

    /// <summary>In the printed order. Those of 18 and 16 AWG stand from memory, and only with devices listed for them.</summary>
    public static readonly ImmutableArray<SmallConductorRow> Rows =
    [
        new(Awg(18), ConductorMetal.Copper, 7.A, CodeEdition.Nec2017, Standing.FromMemory),
        new(Awg(16), ConductorMetal.Copper, 10.A, CodeEdition.Nec2017, Standing.FromMemory),
        new(Awg(14), ConductorMetal.CopperCladAluminum, 10.A, CodeEdition.Nec2023, Standing.Seen),
        new(Awg(14), ConductorMetal.Copper, 15.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(12), ConductorMetal.Aluminum, 15.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(12), ConductorMetal.CopperCladAluminum, 15.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(12), ConductorMetal.Copper, 20.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(10), ConductorMetal.Aluminum, 25.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(10), ConductorMetal.CopperCladAluminum, 25.A, CodeEdition.Nec2017, Standing.Seen),
        new(Awg(10), ConductorMetal.Copper, 30.A, CodeEdition.Nec2017, Standing.Seen),
    ];

    /// <summary>Nothing for a conductor that has no such limit.</summary>
    public static Amperes? Find(Conductor conductor, CodeEdition edition) => RowOf(conductor, edition)?.Most;

    /// <summary>The section, with how well the limit of this conductor stands.</summary>
    public static Citation CiteFor(Conductor conductor, CodeEdition edition) =>
        (Section with { Standing = RowOf(conductor, edition)?.Standing ?? Standing.Seen }).In(edition);

    private static SmallConductorRow? RowOf(Conductor conductor, CodeEdition edition)
    {
        foreach (var row in Rows)
        {
            if (row.Size == conductor.Size && row.Metal == conductor.Metal && row.Since <= edition)
                return row;
        }
        return null;
    }
}
