using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>The lines of the panel's face as text: breakers next to the bus, space numbers at the outer edges.</summary>
internal sealed class FaceText(int columns, Func<Circuit, Leg, VoltAmperes> load)
{
    private const int Bus = 3;
    private const int AroundName = 15;
    private readonly int _left = (columns - Bus) / 2;
    private readonly int _right = columns - Bus - ((columns - Bus) / 2);

    public ImmutableArray<TextRun> Header()
    {
        var left = Columns(_left, "  #", "Circuit", "VA", "A ", "");
        var right = Mirrored(_right, "", "A ", "VA", "Circuit", "  #");
        return [new TextRun($"{left}leg{right}", Tone.Strong)];
    }

    public ImmutableArray<TextRun> Row(FaceLine line, FaceLook look) =>
    [
        line.Left is { } left ? new TextRun(LeftText(left, look), look.ToneOf(left)) : Blank(_left),
        new TextRun($"│{line.Leg}│", ToneOf(line.Leg)),
        line.Right is { } right ? new TextRun(RightText(right, look), look.ToneOf(right)) : Blank(_right),
    ];

    public static Tone ToneOf(Leg leg) => leg switch
    {
        Leg.A => Tone.LegA,
        Leg.B => Tone.LegB,
        _ => Tone.LegC,
    };

    /// <summary>The handle tie of a breaker: nothing on one pole, a bracket down the rows of several.</summary>
    private static string Tie(FaceCell cell, bool left) => cell switch
    {
        { IsOpen: true } or { Circuit.Breaker.Poles: 1 } => " ",
        { IsTop: true } => left ? "┐" : "┌",
        { IsBottom: true } => left ? "┘" : "└",
        _ => "│",
    };

    private static string Columns(int width, string space, string name, string load, string rating, string tie) =>
        $"{space,3} {DisplayText.Fit(name, width - AroundName)} {load,5} {rating,3}{tie,1}";

    private static string Mirrored(int width, string tie, string rating, string load, string name, string space) =>
        $"{tie,1}{rating,-3} {load,5} {DisplayText.Fit(name, width - AroundName)} {space,3}";

    private static TextRun Blank(int width) => new(new string(' ', width));

    private string LeftText(FaceCell cell, FaceLook look) =>
        Columns(_left, $"{cell.Space}", NameOf(cell, look), LoadOf(cell), RatingOf(cell), Tie(cell, left: true));

    private string RightText(FaceCell cell, FaceLook look) =>
        Mirrored(_right, Tie(cell, left: false), RatingOf(cell), LoadOf(cell), NameOf(cell, look), $"{cell.Space}");

    private static string NameOf(FaceCell cell, FaceLook look) => cell switch
    {
        { Crowded: true } => "! two circuits",
        { IsOpen: true } when look.Landing.Contains(cell.Space) => "» lands here",
        { IsOpen: true } => "·",
        { IsTop: false } => "",
        { Circuit: { } circuit } when circuit.Ordinal == look.Held => $"« {circuit.Name}",
        { Circuit: { } circuit } when look.Landing.Contains(cell.Space) => $"» {circuit.Name}",
        { Circuit: { } circuit } => circuit.Name.Length == 0 ? "(no name)" : circuit.Name,
        _ => "",
    };

    private static string RatingOf(FaceCell cell) =>
        cell is { IsTop: true, Circuit: { } circuit } ? Shown.Rounded(circuit.Breaker.Rating.Value, 0) : "";

    private string LoadOf(FaceCell cell) => cell.Circuit is { IsSpare: false } circuit ? Short(load(circuit, cell.Leg)) : "";

    /// <summary>At most five characters: from 100 kVA on in thousands.</summary>
    private static string Short(VoltAmperes power) => power.Value < 100_000
        ? Shown.Rounded(power.Value, 0)
        : $"{Shown.Rounded(power.Value / 1000, 0)}k";
}
