using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Sheets;

/// <summary>The directory on the door, 408.4(A): both columns as on the wall, every space with what it is for.</summary>
internal static class DirectorySheet
{
    public static readonly CodeSection Section = Nec.Section("408.4(A)");

    private static readonly ImmutableArray<Column> OnTheWall =
    [
        new("#", Align.Right), new("Circuit", Wraps: true), new("Breaker"), new("Leg", Align.Middle),
        new("Breaker"), new("Circuit", Wraps: true), new("#", Align.Right),
    ];

    private static readonly ImmutableArray<Column> Listed =
    [
        new("Space"), new("Side"), new("Leg"), new("Circuit"), new("Breaker amperes"), new("Poles"), new("Pole"),
        new("Protection"), new("Verified"),
    ];

    public static Sheet Of(Assessment assessment)
    {
        var schedule = assessment.Schedule;
        var face = Face.Of(schedule);
        return new Sheet(
            $"Circuit directory: {PanelWords.NameOf(schedule.Panel)}",
            [
                new Block.Facts([.. Facts(schedule)]),
                new Block.Grid(Table.Of(OnTheWall, face.Lines.Select(Row))),
                .. Unplaced(schedule, face).Select(circuit => new Block.Paragraph($"WITHOUT A PLACE OF ITS OWN: {Named(circuit)}")),
                new Block.Paragraph(Foot(schedule)),
            ])
        {
            Records = Table.Of(Listed, [.. Cells(face).Select(Record), .. Unplaced(schedule, face).Select(Record)]),
            Sizes = [12, 11, 10, 9, 8.5],
        };
    }

    private static IEnumerable<(string Name, string Value)> Facts(Schedule schedule)
    {
        var panel = schedule.Panel;
        yield return ("Location", PanelWords.Or(panel.Location, "not stated"));
        yield return ("System", $"{panel.System}; bus {PanelWords.Stated(panel.Bus)}; main {panel.Main?.ToString() ?? "not stated"}");
        yield return ("Fed from", PanelWords.Or(panel.FedFrom, PanelWords.ToFillIn));
        if (schedule.Source is { } source)
        {
            var where = source.Location.Length == 0 ? "" : $", {source.Location}";
            var through = schedule.Transfer is { } transfer ? $", through {transfer.Kind.Title}" : "";
            yield return ("And from", $"{PanelWords.Of(source)}{where}{through}");
        }

        yield return ("Revision", $"{PanelWords.Or(panel.Revision, "none")}, {PanelWords.Or(PanelWords.Date(panel.Revised), "no date")}");
        yield return ("Verified", Verified(schedule));
    }

    private static string Verified(Schedule schedule)
    {
        var dates = schedule.Circuits.Select(circuit => circuit.Verified).OfType<DateOnly>().Order().ToList();
        var by = schedule.Panel.VerifiedBy.Length == 0 ? "" : $" by {schedule.Panel.VerifiedBy}";
        var count = $"{dates.Count} of {schedule.Circuits.Length} circuits{by}";
        return dates switch
        {
            [] => "no circuit yet",
            [var first, .., var last] when first != last => $"{count}, {PanelWords.Date(first)} to {PanelWords.Date(last)}",
            _ => $"{count}, {PanelWords.Date(dates[0])}",
        };
    }

    private static ImmutableArray<Cell> Row(FaceLine line) =>
    [
        Number(line.Left), Purpose(line.Left), Breaker(line.Left), $"{line.Leg}",
        Breaker(line.Right), Purpose(line.Right), Number(line.Right),
    ];

    private static Cell Number(FaceCell? cell) => cell is null ? "" : $"{cell.Space}";

    private static Cell Purpose(FaceCell? cell) => cell switch
    {
        null => "",
        { Crowded: true } => "TWO CIRCUITS CLAIM THIS SPACE",
        { Circuit: null } => "Open",
        { Pole: > 0, Circuit: { } circuit } => $"with {circuit.Space}",
        { Circuit: { } circuit } => $"{PanelWords.Purpose(circuit)}{(circuit is { Verified: null, IsSpare: false } ? " *" : "")}",
    };

    private static Cell Breaker(FaceCell? cell) => cell is { IsTop: true, Circuit: { } circuit } ? PanelWords.Of(circuit.Breaker) : "";

    private static string Foot(Schedule schedule)
    {
        var section = Section.In(schedule.Code.Edition);
        return $"{section}: every circuit by its clear and specific purpose, spares and open spaces too. "
            + "An asterisk: nobody wrote down that it was checked at the panel.";
    }

    private static IEnumerable<FaceCell> Cells(Face face) => face.Lines
        .SelectMany(line => new[] { line.Left, line.Right }).OfType<FaceCell>().OrderBy(cell => cell.Space);

    /// <summary>Circuits that the face cannot show: past the last space, or on a space that another one claims.</summary>
    private static IEnumerable<Circuit> Unplaced(Schedule schedule, Face face)
    {
        var shown = Cells(face).Where(cell => cell is { Crowded: false, IsTop: true }).Select(cell => cell.Circuit!.Ordinal).ToHashSet();
        return schedule.Circuits.Where(circuit => !shown.Contains(circuit.Ordinal)).OrderBy(circuit => circuit.Space);
    }

    private static string Named(Circuit circuit) =>
        $"{PanelWords.Purpose(circuit)}, {PanelWords.Of(circuit.Breaker)}, written down at {PanelWords.Spaces(circuit.Spaces)}.";

    private static ImmutableArray<Cell> Record(Circuit circuit) =>
    [
        PanelWords.Spaces(circuit.Spaces),
        "none",
        "",
        PanelWords.Purpose(circuit),
        new Cell(PlainNumber(circuit.Breaker.Rating.Value), true),
        Cell.Of(circuit.Breaker.Poles),
        "",
        circuit.Breaker.Protection.Mark,
        PanelWords.Date(circuit.Verified),
    ];

    private static ImmutableArray<Cell> Record(FaceCell cell) =>
    [
        cell.Space.IsHalf ? $"{cell.Space}" : Cell.Of(cell.Space.Number),
        cell.Space.IsLeft ? "left" : "right",
        $"{cell.Leg}",
        cell switch { { Crowded: true } => Purpose(cell), { Circuit: { } circuit } => PanelWords.Purpose(circuit), _ => "Open" },
        cell.Circuit is { } on ? new Cell(PlainNumber(on.Breaker.Rating.Value), true) : "",
        cell.Circuit is { } with ? Cell.Of(with.Breaker.Poles) : "",
        cell.Circuit is null ? "" : Cell.Of(cell.Pole + 1),
        cell.Circuit is { } watched ? watched.Breaker.Protection.Mark : "",
        PanelWords.Date(cell.Circuit?.Verified),
    ];

    private static string PlainNumber(decimal value) => Engine.Quantities.Shown.Exactly(value);
}
