using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.Sheets;

/// <summary>The load calculation as it is handed in: method, lines, figures with every step, findings, a place to sign.</summary>
internal sealed class LoadSheet(Assessment assessment)
{
    private static readonly ImmutableArray<Column> StepColumns =
        [new("Step", Wraps: true), new("Value", Align.Right), new("Unit"), new("Section", Wraps: true), new("Spaces", Wraps: true)];

    private static readonly ImmutableArray<Column> RecordColumns =
        [new("Figure"), new("Step"), new("Value"), new("Unit"), new("Section"), new("Spaces")];

    private readonly Schedule _schedule = assessment.Schedule;

    public static Sheet Of(Assessment assessment) => new LoadSheet(assessment).Make();

    private Sheet Make()
    {
        var figures = assessment.Derivations;
        var main = figures.Where(figure => FigureNames.SpaceOf(figure.Figure) is null);
        return new Sheet(
            $"Load calculation: {PanelWords.NameOf(_schedule.Panel)}",
            [
                new Block.Facts([.. Facts()]),
                .. Worksheet(),
                .. main.SelectMany(Steps),
                .. Findings(),
                new Block.Heading("Edition"),
                new Block.Paragraph(Edition()),
                new Block.Signatures(["Prepared by, licence, date", "Reviewed by, date"]),
            ])
        {
            Records = Table.Of(RecordColumns, figures.SelectMany(figure => figure.Steps.Select(step => Record(figure, step)))),
        };
    }

    private IEnumerable<(string Name, string Value)> Facts()
    {
        yield return ("Location", PanelWords.Or(_schedule.Panel.Location, "not stated"));
        yield return ("System", $"{_schedule.Panel.System}; bus {PanelWords.Stated(_schedule.Panel.Bus)}; main {_schedule.Panel.Main?.ToString() ?? "not stated"}");
        yield return ("Method", _schedule.Demand.Method.Word);
        yield return ("Connected load", Figure.Of(assessment.Connected.Total));
        if (assessment.Demand is { } demand)
        {
            yield return ("Calculated load", $"{Figure.Of(demand.Total)}; worst leg {Figure.Of(demand.Amperes)}");
            yield return ("Least ampacity", Figure.Of(demand.MinimumAmpacity));
        }

        yield return ("Feeder", $"device {PanelWords.Stated(_schedule.Feeder?.Ocpd)}, calculation asks {Needed(assessment.Feeder?.StandardOcpd)}; "
            + $"conductor {_schedule.Feeder?.Conductor?.ToString() ?? "not stated"}, smallest {assessment.Feeder?.Conductor?.ToString() ?? "none"}");
        yield return ("Transfer equipment", $"{PanelWords.Stated(assessment.Transfer?.Stated)}, calculation asks {Needed(assessment.Transfer?.Standard)}");
        yield return ("Standby source", _schedule.Source is { } source ? PanelWords.Of(source) : "not stated");
    }

    private static string Needed(Amperes? rating) => rating is { } known ? $"{known}" : "for more than is made";

    private IEnumerable<Block> Worksheet()
    {
        if (assessment.Demand is not { } demand)
            return [new Block.Paragraph($"No calculated load: method {_schedule.Demand.Method.Word} lacks its figure.")];
        ImmutableArray<Column> columns =
        [
            new("Line", Wraps: true), new("Connected", Align.Right), new("Factor, %", Align.Right), new("Counts", Align.Right),
            .. _schedule.Panel.System.Legs.Select(leg => new Column($"Leg {leg}", Align.Right)),
            new("Section", Wraps: true), new("Spaces", Wraps: true),
        ];
        return
        [
            new Block.Heading($"Worksheet in VA, method {demand.Method.Word}"),
            new Block.Grid(Table.Of(columns, demand.Worksheet.Lines.Select(Line).Append(Sum(demand)))),
        ];
    }

    private ImmutableArray<Cell> Line(DemandLine line) =>
    [
        line.Label, Cell.Of(line.Connected.Total.Value), line.Factor is { } factor ? Cell.Of(factor.Value) : "", Cell.Of(line.Demand.Total.Value),
        .. _schedule.Panel.System.Legs.Select(leg => Cell.Of(line.Demand.VoltAmperesOn(leg).Value)),
        $"{line.Cite}", PanelWords.Spaces(line.Spaces),
    ];

    private ImmutableArray<Cell> Sum(DemandResult demand) =>
    [
        "In all", "", "", Cell.Of(demand.Total.Value),
        .. _schedule.Panel.System.Legs.Select(leg => Cell.Of(demand.Legs.VoltAmperesOn(leg).Value)),
        "", "",
    ];

    private static IEnumerable<Block> Steps(Derivation figure) =>
    [
        new Block.Heading(figure.Title),
        new Block.Grid(Table.Of(StepColumns, figure.Steps.Select(step => Record(figure, step)[1..]))),
    ];

    private static ImmutableArray<Cell> Record(Derivation figure, DerivationStep step) =>
    [
        figure.Figure, step.Label, step.IsRemark ? Cell.Empty : Cell.Of(step.Value, DerivationText.DecimalsOf(step)), step.Unit, $"{step.Cite}", PanelWords.Spaces(step.Spaces),
    ];

    private IEnumerable<Block> Findings()
    {
        yield return new Block.Heading($"Findings: {FindingCount.Of(assessment)}");
        foreach (var finding in assessment.Findings)
            yield return new Block.Paragraph($"{finding.Severity.Word}: {finding.Message} {finding.Mend} [{finding.Rule}] ({finding.Cite})");
        foreach (var (finding, because) in assessment.Accepted)
            yield return new Block.Paragraph($"Accepted {finding.Severity.Word}: {finding.Message} [{finding.Rule}] ({finding.Cite}). Reason: {because}");
    }

    private string Edition() =>
        $"Sections are those of the National Electrical Code, NFPA 70, {Shown.Exactly(_schedule.Code.Edition.Year)} edition, as the schedule names it. "
        + "Which edition is in force here, and with which amendments, is for the authority having jurisdiction to say. "
        + "Values from common practice or from memory say so; look them up before leaning on them.";
}
