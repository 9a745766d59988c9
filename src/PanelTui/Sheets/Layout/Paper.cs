using System.Collections.Immutable;

namespace PanelTui.Sheets.Layout;

/// <summary>A sheet of paper in points, and what is left inside its margins.</summary>
internal sealed record Paper(string Name, double Width, double Height, double Margin)
{
    public static readonly Paper Letter = new("letter", 612, 792, 40);

    public static readonly Paper A4 = new("a4", 595.28, 841.89, 40);

    /// <summary>Five by eight inches, for the pocket on a panel's door. Common practice, no source.</summary>
    public static readonly Paper Pocket = new("pocket", 360, 576, 22);

    public static readonly ImmutableArray<Paper> All = [Letter, A4, Pocket];

    public (double Width, double Height) Inside => (Width - (2 * Margin), Height - (2 * Margin));
}
