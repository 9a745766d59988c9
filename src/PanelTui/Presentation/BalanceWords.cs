using System.Collections.Immutable;
using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>How plans for a better balance are put in words.</summary>
internal static class BalanceWords
{
    public const string Caution =
        "Work de-energised: switch off and lock out both supplies, test for absence of voltage, torque the terminals. Look first "
        + "whether each wire reaches. Directory, circuit labels and file must follow what was moved. The neutral of a moved circuit stays with it.";

    public static string Of(Percent imbalance) => Shown.Rounded(imbalance.Value, 2, "%");

    public static string Unit(BalanceBy by) => $"{by}" is "connected" or "demand" ? "VA" : "W";

    /// <summary>`connected load`, `demand`, `running watts of Harvest night`, `the most uneven scenario`.</summary>
    public static string Basis(BalanceBy by) => $"{by}" switch
    {
        "connected" => "connected load",
        "demand" => "calculated load (demand)",
        "worst" => "running watts of the most uneven scenario",
        var scenario => $"running watts of {scenario}",
    };

    /// <summary>What each leg carries, or carries in the most uneven scenario.</summary>
    public static ImmutableArray<decimal> WorstRow(BalancePlan plan) =>
        plan.Rows.IsEmpty ? [] : plan.Rows.MaxBy(row => Engine.Loads.Imbalance.Of(row).Value);

    public static string Legs(BalancePlan plan, BalanceBy by) => string.Join("  ", WorstRow(plan)
        .Select((load, leg) => $"{(Leg)leg} {Shown.Rounded(load, 0, Unit(by)),9}"));

    public static string Proof(BalancePlan plan) =>
        plan.Moves == 0 ? "as it is"
        : plan.IsProven ? "best, proven"
        : $"not proven: at best {Of(plan.Bound)}";

    public static string Moves(int count) => count == 1 ? "1 move" : $"{Shown.Exactly(count)} moves";

    public static string WhatMoves(BalanceStep step) => step switch
    {
        { IsRing: true, WiresAlone: true, Moves.Length: 2 } => "two wires or breakers of one kind change places",
        { IsRing: true, Moves.Length: 2 } => "two breakers change places with their wires",
        { IsRing: true } => $"{Shown.Exactly(step.Moves.Length)} breakers change places in a ring, with their wires",
        { Moves: [{ Circuit.Space.IsHalf: true }] } => "one wire goes to another tandem half, or its breaker with it",
        { Moves: [{ Circuit.Breaker.Poles: 1 }] } => "one breaker goes to an open space with its wire",
        _ => "one breaker goes to open spaces with its wires",
    };

    /// <summary>`3 (B)` or `2-4 (A-B)`.</summary>
    public static string Place(PanelSystem system, Circuit circuit, SpaceNumber top)
    {
        var spaces = circuit.Breaker.SpacesFrom(top).ToList();
        return $"{string.Join('-', spaces)} ({string.Join('-', spaces.Select(system.LegOf))})";
    }

    /// <summary>Its id, else its name, else its space: as scripts call it.</summary>
    public static string Called(Circuit circuit) =>
        circuit.Id ?? (circuit.Name.Length > 0 ? circuit.Name : $"{circuit.Space}");

    public static string Title(BalancePlan plan, Percent now) =>
        $"Balance with {Moves(plan.Moves)}, {Of(now)} to {Of(plan.Imbalance)}";
}
