using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>What the source feels: a scenario's figures against every limit, and its circuits to be switched off and on as a trial.</summary>
/// <remarks>Nothing of it is written: scenarios are kept on their own page.</remarks>
internal sealed class RunPage : Page
{
    private const int NameColumns = 34;

    private readonly HashSet<int> _off = [];
    private int _scenario;
    private int _switched;
    private ((Snapshot, int, int, int) Of, ImmutableArray<PageRow> Rows)? _made;

    public override bool CanTurn => true;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("Space", "Switch the circuit off or on, as a trial", (editor, _) => editor.ChooseRow(), Key.Space) { Word = "switch" },
        new PageCommand("i", "What can start", (editor, _) => Show(editor, "What can start", Starts), Key.I) { Word = "start" },
        new PageCommand("e", "How long it lasts", (editor, _) => Show(editor, "How long it lasts", Endurance), Key.E) { Word = "hours" },
        new PageCommand("o", "What if one unit stops", (editor, _) => Show(editor, "What if one unit stops", OneAlone), Key.O) { Word = "one unit" },
        new PageCommand("n", "Neutral and bond", (editor, _) => Show(editor, "Neutral and bond", (session, _) => NeutralRows.Of(session.Schedule)), Key.N)
        {
            Word = "neutral",
        },
    ];

    public override string Title(Session session) =>
        $"On standby: {NameOf(session)}{(_off.Count == 0 ? "" : $", {_off.Count} switched off as a trial")}";

    /// <summary>Made anew only where something changed: the order of shedding takes its time on a large panel.</summary>
    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var of = (session.Now, _scenario, _switched, columns);
        if (_made is not { } made || made.Of != of) _made = made = (of, Make(session, columns));
        return made.Rows;
    }

    private ImmutableArray<PageRow> Make(Session session, int columns)
    {
        var (whole, run) = (Whole(session), Run(session));
        return
        [
            .. RunningRows.Of(run, session.Schedule).SelectMany(line => Fitted(line, columns)),
            PageRow.Gap,
            .. whole.Circuits.OrderBy(circuit => circuit.Space).Select(circuit => Row(session, whole, circuit)),
        ];
    }

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : "A trial: nothing is written. ← → turns to the next scenario. Figures to plan by; measure, and follow the equipment's manuals.";

    public override void Turn(Session session, int by)
    {
        var count = session.Schedule.Scenarios.Length + 1;
        _scenario = (_scenario + by + count) % count;
        _off.Clear();
        _switched++;
        Place = PagePlace.Start;
        session.Say("");
    }

    private static IEnumerable<PageRow> Fitted(string line, int columns) =>
        (DisplayText.Width(line) <= columns ? [line] : Wrapped.Of(line, columns))
            .Select(part => new PageRow(part, line.StartsWith("OVER", StringComparison.Ordinal) || line.StartsWith("DANGER", StringComparison.Ordinal) ? Tone.Error : Tone.Plain));

    private static IEnumerable<string> Starts(Session session, ScenarioRun run) =>
        StartRows.Of(run, new StandbySurge(session.Schedule.Source, session.Schedule.Panel.System));

    private static IEnumerable<string> Endurance(Session session, ScenarioRun run) => EnduranceRows.Of(run, session.Schedule, RunRequest.Usual);

    private static IEnumerable<string> OneAlone(Session session, ScenarioRun run) => OneUnit.Of(run, session.Schedule) is { } one
        ? OneUnitRows.Of(one)
        : ["The source is not two stacked 120 V units: none can stop alone."];

    private PageRow Row(Session session, ScenarioRun whole, Circuit circuit)
    {
        var watts = whole.Loads.Where(load => load.Circuit.Ordinal == circuit.Ordinal).Sum(load => load.RunningWatts.Value);
        var legs = string.Concat(circuit.Legs(session.Schedule.Panel.System));
        var mark = _off.Contains(circuit.Ordinal) ? "[ ]" : "[x]";
        return new PageRow(
            $"{mark} {$"{circuit.Space}",3} {DisplayText.Fit(DisplayText.Clean(CircuitText.NameOf(circuit)), NameColumns)} {legs,3} {Shown(watts),9}",
            Tone.Plain,
            editor => Switch(editor, circuit));
    }

    private static string Shown(decimal watts) => Engine.Quantities.Shown.Rounded(watts, 0, "W");

    private void Switch(IEditor editor, Circuit circuit)
    {
        if (!_off.Remove(circuit.Ordinal)) _off.Add(circuit.Ordinal);
        _switched++;
        editor.Session.Say("");
    }

    private void Show(IEditor editor, string what, Func<Session, ScenarioRun, IEnumerable<string>> lines) =>
        editor.Open(new LinesPage($"{what}: {NameOf(editor.Session)}", session => lines(session, Run(session))));

    private string NameOf(Session session) => ScenarioOf(session).Name;

    /// <summary>Everything on the panel first, then the scenarios of the file.</summary>
    private Scenario ScenarioOf(Session session) => _scenario > 0 && _scenario <= session.Schedule.Scenarios.Length
        ? session.Schedule.Scenarios[_scenario - 1]
        : new Scenario { Name = "everything on", RunsAll = true };

    private ScenarioRun Whole(Session session) => ScenarioRun.Of(ScenarioOf(session), session.Schedule, session.Assessment.Connected.Loads);

    private ScenarioRun Run(Session session)
    {
        var whole = Whole(session);
        return whole.Circuits.Where(circuit => _off.Contains(circuit.Ordinal)).Aggregate(whole, (run, circuit) => run.Without(circuit, session.Schedule));
    }
}
