using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>What a breaker watches besides overcurrent.</summary>
public enum Protection
{
    Standard,
    Gfci,
    Afci,
    DualFunction,
}

/// <summary>A branch breaker: its handle rating, its poles (1 to 3), and what else it watches.</summary>
public sealed record Breaker(Amperes Rating, int Poles = 1, Protection Protection = Protection.Standard)
{
    /// <summary>The spaces it takes when its top pole sits at <paramref name="top"/>: n, n + 2, n + 4.</summary>
    /// <remarks>One to three of them, whatever the poles are said to be.</remarks>
    public IEnumerable<SpaceNumber> SpacesFrom(SpaceNumber top) =>
        Enumerable.Range(0, Math.Clamp(Poles, 1, 3)).Select(top.Below);
}

/// <summary>The words for what a breaker watches besides overcurrent.</summary>
public static class ProtectionWords
{
    extension(Protection protection)
    {
        /// <summary>As the schedule file writes it: `dual-function`.</summary>
        public string Word => Row(protection).Word;

        /// <summary>After the rating of a breaker: `GFCI`; empty for a standard one.</summary>
        public string Mark => Row(protection).Mark;

        /// <summary>The breaker as a finding names it: `GFCI breaker`.</summary>
        public string Title => Row(protection).Title;
    }

    private static (string Word, string Mark, string Title) Row(Protection protection) => protection switch
    {
        Protection.Standard => ("standard", "", "standard breaker"),
        Protection.Gfci => ("gfci", "GFCI", "GFCI breaker"),
        Protection.Afci => ("afci", "AFCI", "AFCI breaker"),
        Protection.DualFunction => ("dual-function", "AFCI+GFCI", "dual-function breaker"),
        _ => throw Unnamed.Of(protection),
    };
}
