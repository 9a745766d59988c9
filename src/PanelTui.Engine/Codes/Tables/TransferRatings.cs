using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Ratings in which transfer equipment for panels of this size is made. Common practice, no source.</summary>
public static class TransferRatings
{
    public static readonly Citation Cite = Citation.CommonPractice;

    public static readonly ImmutableArray<Amperes> All =
        [30.A, 50.A, 60.A, 100.A, 125.A, 150.A, 200.A, 225.A, 400.A, 600.A];

    /// <summary>The smallest rating not below a current; nothing above 600 A.</summary>
    public static Amperes? NextUp(Amperes current)
    {
        foreach (var rating in All)
        {
            if (rating >= current)
                return rating;
        }
        return null;
    }
}
