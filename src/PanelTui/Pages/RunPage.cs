using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>What the source feels, always in sight, and the circuits below it to be switched off and on as a trial.</summary>
/// <remarks>Nothing of it is written: scenarios are kept on their own page.</remarks>
internal sealed class RunPage : Page
{
    /// <summary>Room for the start of a motor beside its watts.</summary>
    private const int Wide = 74;

    private readonly Trial _trial = new();
    private ((Snapshot, int, int) Of, Made Made)? _last;

    public override bool CanTurn => true;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("Space", "Switch the circuit off or on, as a trial", (editor, _) => editor.ChooseRow(), Key.Space) { Word = "switch" },
        .. Views,
    ];

    private ImmutableArray<EditorCommand> Views =>
    [
        View("i", "What can start", "start", Starts, Key.I),
        View("e", "How long it lasts", "hours", Endurance, Key.E),
        View("o", "What if one unit stops", "one unit", OneAlone, Key.O),
        View("n", "Neutral and bond", "neutral", (session, _) => NeutralRows.Of(session.Schedule), Key.N),
    ];

    public override string Title(Session session) => $"On standby: {_trial.Called(session)}";

    public override ImmutableArray<PageRow> Pinned(Session session, int columns) => Of(session, columns).Pinned;

    public override ImmutableArray<PageRow> Rows(Session session, int columns) => Of(session, columns).Rows;

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : "A trial: nothing is written. ← → turns to the next scenario. Figures to plan by; measure, and follow the equipment's manuals.";

    public override void Turn(Session session, int by)
    {
        _trial.Turn(session, by);
        Place = PagePlace.Start;
        session.Say("");
    }

    /// <summary>Made anew only where something changed: the order of shedding takes its time on a large panel.</summary>
    private Made Of(Session session, int columns)
    {
        var of = (session.Now, _trial.Version, columns);
        if (_last is not { } last || last.Of != of) _last = last = (of, Make(session, _trial.Run(session), columns));
        return last.Made;
    }

    private Made Make(Session session, ScenarioRun run, int columns) => new(
        [.. LiveRows.Of(run, session.Schedule, columns).Select(Line), PageRow.Gap],
        [
            .. Remarks(session, run, columns),
            .. session.Schedule.Circuits.Where(circuit => !circuit.IsSpare).OrderBy(circuit => circuit.Space)
                .Select(circuit => Row(session, run, circuit, columns)),
        ]);

    private static ImmutableArray<PageRow> Remarks(Session session, ScenarioRun run, int columns) =>
        [.. RunningRows.Remarks(run, session.Schedule).SelectMany(line => Wrapped.Of(line, columns).Select(part => new PageRow(part, ToneOf(line))))];

    /// <summary>The chosen circuit stays chosen where remarks above it come or go.</summary>
    private void Follow(int before, int after) =>
        Place = new PagePlace(Math.Max(0, Place.Top + Math.Min(0, after - before)), Place.Chosen + after - before);

    private static PageRow Line(string line) => new(line, ToneOf(line));

    private static Tone ToneOf(string line) =>
        line.Contains("OVER", StringComparison.Ordinal) || line.Contains("DANGER", StringComparison.Ordinal) || line.Contains('!', StringComparison.Ordinal)
            ? Tone.Error
            : Tone.Plain;

    private static IEnumerable<string> Starts(Session session, ScenarioRun run) =>
        StartRows.Of(run, session.Schedule);

    private static IEnumerable<string> Endurance(Session session, ScenarioRun run) => EnduranceRows.Of(run, session.Schedule, RunRequest.Usual);

    private static IEnumerable<string> OneAlone(Session session, ScenarioRun run) => OneUnit.Of(run, session.Schedule) is { } one
        ? OneUnitRows.Of(one)
        : ["The source is not two stacked 120 V units: none can stop alone."];

    private PageRow Row(Session session, ScenarioRun run, Circuit circuit, int columns)
    {
        var isOn = run.Circuits.Any(on => on.Ordinal == circuit.Ordinal);
        var isDead = isOn && run.Dead.Any(load => load.Circuit.Ordinal == circuit.Ordinal);
        var watts = (isOn ? run.Loads : session.Assessment.Connected.Loads)
            .Where(load => load.Circuit.Ordinal == circuit.Ordinal).Sum(load => load.RunningWatts.Value);
        var start = columns >= Wide && run.Starts.Moments.FirstOrDefault(moment => moment.Starting[0].Circuit.Ordinal == circuit.Ordinal) is { } moment
            ? $"  starts {Shown.Rounded(moment.Starting[0].Power.Value / 1000, 2, "kVA")}"
            : "";
        var asks = isDead ? "dead: no 240 V" : $"{Shown.Rounded(watts, 0, "W"),9}{start}";
        var legs = string.Concat(circuit.Legs(session.Schedule.Panel.System));
        var name = DisplayText.Fit(CircuitText.NameOf(circuit), Math.Max(12, columns - (columns >= Wide ? 44 : 26)));
        return new PageRow(
            $"{(isOn ? "[x]" : "[ ]")} {$"{circuit.Space}",3} {name} {legs,3} {asks}",
            isOn ? Tone.Plain : Tone.Faint,
            editor =>
            {
                var together = _trial.Switch(editor.Session, circuit);
                Follow(Remarks(session, run, columns).Length, Remarks(session, _trial.Run(session), columns).Length);
                editor.Session.Say(together.Length > 1 ? $"Their handles are tied, so they go together: {RunningRows.Names(together)}." : "");
            });
    }

    /// <summary>From one view to the next the way back stays one Esc long.</summary>
    private PageCommand View(string key, string what, string word, Func<Session, ScenarioRun, IEnumerable<string>> lines, Key pressed) => new(
        key,
        what,
        (editor, page) =>
        {
            if (page is RunView) editor.ClosePage();
            editor.Open(new RunView(
                session => $"{what}: {_trial.Called(session)}", session => lines(session, _trial.Run(session)), Views, by => Turn(editor.Session, by)));
        },
        pressed)
    {
        Word = word,
    };

    private sealed record Made(ImmutableArray<PageRow> Pinned, ImmutableArray<PageRow> Rows);
}
