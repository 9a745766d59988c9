using System.Collections.Frozen;
using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents.Intents;
using PanelTui.Engine;
using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>One plan step by step, each to be taken or left out, and the face of the panel as it would be.</summary>
internal sealed class BalancePlanPage(BalanceFrontier frontier, BalancePlan plan) : Page
{
    private readonly ImmutableArray<BalanceStep> _steps = BalanceStep.Of(frontier.Schedule, plan.Hops);
    private readonly HashSet<int> _leftOut = [];

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("t", "Take the marked moves, as one step of undo", (editor, _) => Take(editor), Key.T)
        {
            Needs = (editor, _) => WhyNot(editor.Session),
            Word = "take them",
            Edits = true,
        },
    ];

    public override string Title(Session session) => BalanceWords.Title(plan, frontier.Now);

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
    [
        .. Wrapped.Of(BalanceWords.Caution, columns).Select(line => new PageRow(line)),
        PageRow.Gap,
        .. _steps.SelectMany((step, number) => Step(step, number, columns)),
        PageRow.Gap,
        .. Figures(),
        PageRow.Gap,
        .. WhyNot(session) is { } why
            ? Wrapped.Of(DisplayText.Clean(why), columns).Select(line => new PageRow(line, Tone.Warning))
            : Face(columns),
    ];

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : "Enter marks a step or leaves it out; t takes what is marked; ↓ PgDn shows the face.";

    private IEnumerable<Hop> Marked => _steps.Where((_, number) => !_leftOut.Contains(number))
        .SelectMany(step => step.Moves).Select(move => new Hop(move.Circuit.Ordinal, move.To));

    private string? WhyNot(Session session) => !ReferenceEquals(session.Schedule, frontier.Schedule)
        ? "The schedule has changed since; go back and look anew"
        : Marked.Any() ? BalanceCheck.WhyNot(frontier.Schedule, [.. Marked]) : "No move is marked";

    private void Take(IEditor editor)
    {
        var (hops, after) = (Marked.ToList(), BalanceGauge.Of(After(), frontier.By));
        editor.CloseAllPages();
        var title = $"Balance with {BalanceWords.Moves(hops.Count)}, {BalanceWords.Of(frontier.Now)} to {BalanceWords.Of(after)}";
        if (editor.Session.Do(snapshot => MoveCircuits.In(snapshot, hops, title)) is { } refused) editor.Session.Say(refused);
    }

    private Schedule After() => Rehung.With(frontier.Schedule, Marked);

    private IEnumerable<PageRow> Step(BalanceStep step, int number, int columns)
    {
        var mark = _leftOut.Contains(number) ? " " : "x";
        yield return new PageRow($"[{mark}] {number + 1}. {BalanceWords.WhatMoves(step)}", Tone.Plain, editor =>
        {
            if (!_leftOut.Remove(number)) _leftOut.Add(number);
            editor.Session.Say("");
        });
        foreach (var move in step.Moves)
        {
            var system = frontier.Schedule.Panel.System;
            yield return new PageRow(DisplayText.Fit(DisplayText.Clean(
                $"       {DisplayText.Fit(CircuitText.NameOf(move.Circuit), 34)} {BalanceWords.Place(system, move.Circuit, move.From)} to {BalanceWords.Place(system, move.Circuit, move.To)}"), columns));
        }
    }

    private IEnumerable<PageRow> Figures()
    {
        var rows = BalanceGauge.Rows(After(), frontier.By);
        var then = frontier.Plans[0] with { Rows = rows, Imbalance = BalanceGauge.Of(rows) };
        yield return new PageRow($"before {BalanceWords.Of(frontier.Now),10}   {BalanceWords.Legs(frontier.Plans[0], frontier.By)}");
        yield return new PageRow($"after  {BalanceWords.Of(then.Imbalance),10}   {BalanceWords.Legs(then, frontier.By)}", Tone.Strong);
    }

    private IEnumerable<PageRow> Face(int columns)
    {
        var after = After();
        var landing = Marked.SelectMany(hop => after.Circuits[hop.Ordinal].Spaces).ToFrozenSet();
        var text = new FaceText(after, columns, new CircuitLoads(Assessment.Of(after)).On);
        var look = new FaceLook(default, null, landing);
        return [new PageRow(text.Header()), .. Presentation.Face.Of(after).Lines.Select(line => new PageRow(text.Row(line, look)))];
    }
}
