using PanelTui.Engine.Balance;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>A frontier and one of its plans as a page of text, at most 80 columns wide.</summary>
internal static class BalanceText
{
    private const int Columns = 80;

    public static IEnumerable<string> Of(BalanceFrontier frontier, BalancePlan plan) =>
    [
        .. Frontier(frontier), "", .. Plan(frontier, plan), .. Staying(frontier),
    ];

    public static IEnumerable<string> Plan(BalanceFrontier frontier, BalancePlan plan)
    {
        if (plan.Moves == 0)
        {
            yield return frontier.Plans.Length == 1 ? "No plan is better than the panel as it is." : "No moves: the panel stays as it is.";
            yield break;
        }

        yield return $"The plan with {BalanceWords.Moves(plan.Moves)}, {BalanceWords.Of(frontier.Now)} to {BalanceWords.Of(plan.Imbalance)}:";
        foreach (var (step, number) in BalanceStep.Of(frontier.Schedule, plan.Hops).Select((step, at) => (step, at + 1)))
        {
            yield return $"{Shown.Exactly(number),3}. {BalanceWords.WhatMoves(step)}";
            foreach (var move in step.Moves) yield return Move(frontier, move);
        }

        var (before, after) = (BalanceWords.WorstRow(frontier.Plans[0]), BalanceWords.WorstRow(plan));
        for (var leg = 0; leg < after.Length; leg++)
            yield return $"     Leg {(Engine.Panels.Leg)leg}: {Rounded(frontier, before[leg])} before, {Rounded(frontier, after[leg])} after";
        yield return "";
        foreach (var line in Wrapped.Of(BalanceWords.Caution, Columns)) yield return line;
    }

    private static IEnumerable<string> Frontier(BalanceFrontier frontier)
    {
        var name = frontier.Schedule.Panel.Name is { Length: > 0 } given ? given : "Panel without a name";
        yield return DisplayText.Fit(DisplayText.Clean($"{name}: balance of the {BalanceWords.Basis(frontier.By)}"), Columns).TrimEnd();
        foreach (var line in Wrapped.Of($"Imbalance is the {Imbalance.Definition}.", Columns)) yield return line;
        yield return "";
        yield return "moves  imbalance   legs";
        foreach (var plan in frontier.Plans)
        {
            yield return $"{Shown.Exactly(plan.Moves),5} {BalanceWords.Of(plan.Imbalance),10}   "
                + $"{BalanceWords.Legs(plan, frontier.By)}   {BalanceWords.Proof(plan)}";
        }

        yield return frontier.IsComplete
            ? "No number of moves does better; that is proven."
            : $"The search was stopped: more moves may do better, though not below {BalanceWords.Of(frontier.Least)}.";
    }

    private static string Move(BalanceFrontier frontier, BalanceMove move)
    {
        var system = frontier.Schedule.Panel.System;
        var (from, to) = (BalanceWords.Place(system, move.Circuit, move.From), BalanceWords.Place(system, move.Circuit, move.To));
        return $"     {DisplayText.Fit(DisplayText.Clean(CircuitText.NameOf(move.Circuit)), 34)} {from} to {to}";
    }

    private static IEnumerable<string> Staying(BalanceFrontier frontier)
    {
        if (frontier.Staying.IsEmpty) yield break;
        yield return "";
        yield return "Not moved:";
        foreach (var (circuit, because) in frontier.Staying)
        {
            foreach (var line in Wrapped.Of(DisplayText.Clean($"{circuit.Space} {CircuitText.NameOf(circuit)}: {because}"), Columns - 2))
                yield return $"  {line}";
        }
    }

    private static string Rounded(BalanceFrontier frontier, decimal load) => Shown.Rounded(load, 0, BalanceWords.Unit(frontier.By));
}
