using System.Collections.Immutable;
using PanelTui.Editing;
using PanelTui.Engine.Balance;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>The best balance for each number of moves; Enter shows a plan on the face of the panel.</summary>
/// <param name="later">Runs something on the screen's thread, from any thread.</param>
internal sealed class BalancePage(Action<Action> later) : Page, IDisposable
{
    private BalanceLookout? _lookout;
    private int _by;

    public override bool CanTurn => true;

    public override string Title(Session session) => $"Balance of the {BalanceWords.Basis(By(session))}";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        if (BalanceGauge.WhyNot(session.Schedule, By(session)) is { } reason) return Sentence($"Nothing to balance: {reason}.", columns);
        var lookout = Look(session);
        if (lookout.Found is not { } frontier) return Sentence("Looking at every single move…", columns);
        return
        [
            new PageRow("moves  imbalance   legs", Tone.Strong),
            .. frontier.Plans.Select(plan => Row(frontier, plan, columns)),
            PageRow.Gap,
            .. Sentence(Verdict(frontier, lookout.IsOver), columns),
            .. frontier.Staying.IsEmpty ? [] : new[] { PageRow.Gap, new PageRow("Not moved:", Tone.Strong) },
            .. frontier.Staying.SelectMany(one => Sentence($"{one.Circuit.Space} {CircuitText.NameOf(one.Circuit)}: {one.Because}", columns)),
        ];
    }

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : "Enter shows a plan on the face of the panel. ← → balance by another figure.";

    public override void Turn(Session session, int by)
    {
        var count = Choices(session).Length;
        _by = (_by + by + count) % count;
        Forget();
        Place = PagePlace.Start;
        session.Say("");
    }

    public void Dispose() => Forget();

    private void Forget()
    {
        _lookout?.Dispose();
        _lookout = null;
    }

    /// <summary>A change of the schedule, as by undo, begins anew.</summary>
    private BalanceLookout Look(Session session)
    {
        if (_lookout is { } looking && ReferenceEquals(looking.Schedule, session.Schedule)) return looking;
        Forget();
        return _lookout = new BalanceLookout(session.Schedule, By(session), () => later(() => session.Say(session.Message)));
    }

    private static PageRow Row(BalanceFrontier frontier, BalancePlan plan, int columns)
    {
        var text = DisplayText.Fit(
            $"{plan.Moves,5} {BalanceWords.Of(plan.Imbalance),10}   {BalanceWords.Legs(plan, frontier.By)}   {BalanceWords.Proof(plan)}", columns);
        return plan.Moves == 0 ? new PageRow(text) : new PageRow(text, Tone.Plain, editor => editor.Open(new BalancePlanPage(frontier, plan)));
    }

    private static string Verdict(BalanceFrontier frontier, bool isOver) => (frontier.IsComplete, isOver, frontier.Plans.Length) switch
    {
        (true, _, 1) => "No plan is better than the panel as it is; that is proven.",
        (true, _, _) => "No number of moves does better; that is proven.",
        (_, false, _) => "Still looking at more moves…",
        _ => $"The search was ended after 10 s: more moves may do better, though not below {BalanceWords.Of(frontier.Least)}.",
    };

    private BalanceBy By(Session session) => Choices(session) is var choices && _by < choices.Length ? choices[_by] : choices[0];

    private static ImmutableArray<BalanceBy> Choices(Session session) =>
        [BalanceBy.Connected, BalanceBy.Demand, BalanceBy.Worst, .. session.Schedule.Scenarios.Select(scenario => BalanceBy.Scenario(scenario.Name))];

    private static ImmutableArray<PageRow> Sentence(string text, int columns) =>
        [.. Wrapped.Of(DisplayText.Clean(text), columns).Select(line => new PageRow(line))];
}
