using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>One row: the gauge, and the ampacity with three and with two current-carrying conductors.</summary>
public sealed record CordRow(int Gauge, Amperes Three, Standing ThreeStands, Amperes Two, Standing TwoStands);

/// <summary>Ampacity of hard-service cord (S, SO, SOOW, ST and their kin) in copper, at 30 C around it.</summary>
/// <remarks>A factory-made, listed cord set goes by its own marking instead.</remarks>
public static class CordAmpacity
{
    private static readonly CodeSection Seen = Nec.Section("Table 400.5(A)(1)");

    /// <summary>In the printed order. Column A counts three current-carrying conductors, column B two.</summary>
    public static readonly ImmutableArray<CordRow> Rows =
    [
        new(18, 7.A, Standing.Seen, 10.A, Standing.Seen),
        new(16, 10.A, Standing.Seen, 13.A, Standing.Seen),
        new(14, 15.A, Standing.Seen, 18.A, Standing.Seen),
        new(12, 20.A, Standing.Seen, 25.A, Standing.Seen),
        new(10, 25.A, Standing.Seen, 30.A, Standing.Seen),
        new(8, 35.A, Standing.Seen, 40.A, Standing.Seen),
        new(6, 45.A, Standing.FromMemory, 55.A, Standing.Seen),
        new(4, 60.A, Standing.FromMemory, 70.A, Standing.FromMemory),
        new(2, 80.A, Standing.FromMemory, 95.A, Standing.FromMemory),
    ];

    /// <summary>Nothing for a size or a metal that cord is not made in.</summary>
    public static Amperes? Find(Conductor cord, bool threeConductors) =>
        RowOf(cord) is not { } row ? null : threeConductors ? row.Three : row.Two;

    /// <summary>The table, with how well the figure of this cord stands.</summary>
    public static CodeSection SectionFor(Conductor? cord, bool threeConductors) => Seen with
    {
        Standing = cord is null || RowOf(cord) is not { } row ? Standing.Seen
            : threeConductors ? row.ThreeStands : row.TwoStands,
    };

    private static CordRow? RowOf(Conductor cord)
    {
        foreach (var row in Rows)
        {
            if (row.Gauge == cord.Size.Gauge && cord.Metal == ConductorMetal.Copper)
                return row;
        }
        return null;
    }
}
