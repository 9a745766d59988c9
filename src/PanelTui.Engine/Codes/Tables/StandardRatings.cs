using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Standard ampere ratings of inverse-time circuit breakers; the sizes of fuses alone are left out.</summary>
public static class StandardRatings
{
    public static readonly CodeSection Section = Nec.Section("Table 240.6(A)");

    private static readonly ImmutableArray<Amperes> Since2017 =
    [
        15.A, 20.A, 25.A, 30.A, 35.A, 40.A, 45.A, 50.A, 60.A, 70.A,
        80.A, 90.A, 100.A, 110.A, 125.A, 150.A, 175.A, 200.A, 225.A, 250.A,
        300.A, 350.A, 400.A, 450.A, 500.A, 600.A, 700.A, 800.A, 1000.A, 1200.A,
        1600.A, 2000.A, 2500.A, 3000.A, 4000.A, 5000.A, 6000.A,
    ];

    /// <summary>The 2023 edition made 10 A a breaker size, for 14 AWG copper-clad aluminum.</summary>
    private static readonly ImmutableArray<Amperes> Since2023 = [10.A, .. Since2017];

    /// <summary>In the printed order, smallest first.</summary>
    public static ImmutableArray<Amperes> In(CodeEdition edition) =>
        edition switch
        {
            CodeEdition.Nec2017 or CodeEdition.Nec2020 => Since2017,
            CodeEdition.Nec2023 => Since2023,
            _ => throw Unnamed.Of(edition),
        };

    public static bool Has(Amperes rating, CodeEdition edition) => In(edition).Contains(rating);

    /// <summary>The smallest standard rating not below a current; nothing above 6000 A.</summary>
    public static Amperes? NextUp(Amperes current, CodeEdition edition)
    {
        foreach (var rating in In(edition))
        {
            if (rating >= current)
                return rating;
        }
        return null;
    }

    /// <summary>The largest standard rating not above a current; nothing below the first.</summary>
    public static Amperes? NextDown(Amperes current, CodeEdition edition)
    {
        Amperes? below = null;
        foreach (var rating in In(edition))
            below = rating <= current ? rating : below;
        return below;
    }
}
