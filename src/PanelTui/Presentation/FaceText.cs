using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>The lines of the panel's face as text: breakers next to the bus, space numbers at the outer edges.</summary>
internal sealed class FaceText
{
    private const int Bus = 3;
    private const int Rating = 3;
    private const int Gaps = 4; // after the number, the name and the load, and the tie next to the bus
    private readonly Func<Circuit, Leg, VoltAmperes> _load;
    private readonly int _numberColumns;
    private readonly int _loadColumns;
    private readonly int _left;
    private readonly int _right;

    public FaceText(Schedule schedule, int columns, Func<Circuit, Leg, VoltAmperes> load)
    {
        _load = load;
        _left = (columns - Bus) / 2;
        _right = columns - Bus - _left;
        _numberColumns = schedule.Circuits.Any(circuit => circuit.Space.IsHalf) || schedule.Panel.Spaces > 99 ? 3 : 2;
        _loadColumns = schedule.Circuits
            .SelectMany(circuit => circuit.Legs(schedule.Panel.System).Select(leg => Short(load(circuit, leg)).Length))
            .Append(4).Max();
    }

    public ImmutableArray<TextRun> Header()
    {
        var left = $"{Number("#")} {Name("Circuit", _left)} {Load("VA")} {"A",Rating} ";
        var right = $" {"A",-Rating} {Load("VA")} {Name("Circuit", _right)} {Number("#")}";
        return [new TextRun($"{left}leg{right}", Tone.Strong)];
    }

    /// <summary>The cursor marks number and name alone, so that moving it costs few bytes on a slow line.</summary>
    public ImmutableArray<TextRun> Row(FaceLine line, FaceLook look) =>
    [
        .. line.Left is { } left ? LeftOf(left, look) : [Blank(_left)],
        new TextRun($"│{line.Leg}│", ToneOf(line.Leg)),
        .. line.Right is { } right ? RightOf(right, look) : [Blank(_right)],
    ];

    public static Tone ToneOf(Leg leg) => leg switch
    {
        Leg.A => Tone.LegA,
        Leg.B => Tone.LegB,
        Leg.C => Tone.LegC,
        _ => throw Unnamed.Of(leg),
    };

    private ImmutableArray<TextRun> LeftOf(FaceCell cell, FaceLook look) =>
    [
        new TextRun($"{Number($"{cell.Space}")} {Name(NameOf(cell, look, NameColumns(_left)), _left)}", look.ToneOf(cell)),
        new TextRun($" {Load(LoadOf(cell))} {RatingOf(cell),Rating}{Tie(cell, left: true)}"),
    ];

    private ImmutableArray<TextRun> RightOf(FaceCell cell, FaceLook look) =>
    [
        new TextRun($"{Tie(cell, left: false)}{RatingOf(cell),-Rating} {Load(LoadOf(cell))} "),
        new TextRun($"{Name(NameOf(cell, look, NameColumns(_right)), _right)} {Number($"{cell.Space}")}", look.ToneOf(cell)),
    ];

    /// <summary>The handle tie of a breaker: nothing on one pole, a bracket down the rows of several.</summary>
    private static string Tie(FaceCell cell, bool left) => cell switch
    {
        { IsOpen: true } or { Circuit.Breaker.Poles: 1 } => " ",
        { IsTop: true } => left ? "┐" : "┌",
        { IsBottom: true } => left ? "┘" : "└",
        _ => left ? "┤" : "├",
    };

    /// <summary>A name that is too long for its row goes on in the rows of the other poles.</summary>
    private static string NameOf(FaceCell cell, FaceLook look, int columns) => cell switch
    {
        { Crowded: true } => "! two circuits",
        { IsOpen: true } when look.Landing.Contains(cell.Space) => "» lands here",
        { IsOpen: true } => "·",
        { Circuit: { } circuit, Pole: var pole } => RowOf($"{Mark(cell, look)}{Written(circuit)}", columns, pole, circuit.Breaker.Poles),
        _ => "",
    };

    private static string Mark(FaceCell cell, FaceLook look) => cell switch
    {
        { Circuit.Ordinal: var ordinal } when ordinal == look.Held => "« ",
        _ when look.Landing.Contains(cell.Space) => "» ",
        _ => "",
    };

    private static string Written(Circuit circuit) => circuit.Name.Length == 0 ? "(no name)" : circuit.Name;

    private static string RowOf(string name, int columns, int row, int rows)
    {
        var wrapped = Wrapped.Of(DisplayText.Clean(name), columns).ToList();
        return row == rows - 1 ? string.Join(' ', wrapped.Skip(row)) : wrapped.ElementAtOrDefault(row) ?? "";
    }

    private static string RatingOf(FaceCell cell) =>
        cell is { IsTop: true, Circuit: { } circuit } ? Shown.Rounded(circuit.Breaker.Rating.Value, 0) : "";

    /// <summary>At most five characters: from 100 kVA on in thousands.</summary>
    private static string Short(VoltAmperes power) => power.Value < 100_000
        ? Shown.Rounded(power.Value, 0)
        : $"{Shown.Rounded(power.Value / 1000, 0)}k";

    private static TextRun Blank(int width) => new(new string(' ', width));

    private string LoadOf(FaceCell cell) => cell.Circuit is { IsSpare: false } circuit ? Short(_load(circuit, cell.Leg)) : "";

    private string Number(string number) => number.PadLeft(_numberColumns);

    private string Load(string load) => load.PadLeft(_loadColumns);

    private string Name(string name, int side) => DisplayText.Fit(name, NameColumns(side));

    private int NameColumns(int side) => Math.Max(0, side - _numberColumns - _loadColumns - Rating - Gaps);
}
