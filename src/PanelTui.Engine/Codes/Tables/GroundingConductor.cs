using System.Collections.Immutable;
using PanelTui.Engine.Quantities;
using static PanelTui.Engine.Quantities.ConductorSize;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row: for a device up to this rating, the size in copper and in aluminum.</summary>
public sealed record GroundingRow(Amperes UpTo, ConductorSize Copper, ConductorSize Aluminum);

/// <summary>Smallest equipment grounding conductor for the overcurrent device ahead of it.</summary>
public static class GroundingConductor
{
    public static readonly CodeSection Section = Nec.Section("Table 250.122");

    /// <summary>In the printed order; the rows of 30 A and 40 A, which repeat that of 60 A, are left out.</summary>
    public static readonly ImmutableArray<GroundingRow> Rows =
    [
        //   device  Cu       Al or copper-clad Al
        new(15.A, Awg(14), Awg(12)),
        new(20.A, Awg(12), Awg(10)),
        new(60.A, Awg(10), Awg(8)),
        new(100.A, Awg(8), Awg(6)),
        new(200.A, Awg(6), Awg(4)),
        new(300.A, Awg(4), Awg(2)),
        new(400.A, Awg(3), Awg(1)),
        new(500.A, Awg(2), Aught(1)),
        new(600.A, Awg(1), Aught(2)),
        new(800.A, Aught(1), Aught(3)),
        new(1000.A, Aught(2), Aught(4)),
        new(1200.A, Aught(3), OfKcmil(250)),
        new(1600.A, Aught(4), OfKcmil(350)),
        new(2000.A, OfKcmil(250), OfKcmil(400)),
    ];

    /// <summary>Nothing above 2000 A. Copper-clad aluminum goes with aluminum.</summary>
    public static Conductor? Find(Amperes device, ConductorMetal metal)
    {
        foreach (var row in Rows)
        {
            if (device <= row.UpTo)
                return new Conductor(metal switch
        {
            ConductorMetal.Copper => row.Copper,
            ConductorMetal.Aluminum or ConductorMetal.CopperCladAluminum => row.Aluminum,
            _ => throw Unnamed.Of(metal),
        }, metal);
        }
        return null;
    }
}
