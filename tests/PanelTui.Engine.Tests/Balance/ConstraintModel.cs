using System.Globalization;
using Google.OrTools.Sat;
using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>
/// The same question put to Google OR-Tools' CP-SAT: a yes or no for each breaker in each space, and nothing of the search's own ideas.
/// </summary>
internal sealed class ConstraintModel
{
    private readonly Schedule _schedule;
    private readonly CpModel _model = new();
    private readonly List<(SpaceNumber Top, BoolVar Here)>[] _choices;
    private readonly IntVar _deviation;

    private ConstraintModel(Schedule schedule, int moves)
    {
        _schedule = schedule;
        _choices = [.. schedule.Circuits.Select(ChoicesOf)];
        _deviation = _model.NewIntVar(0, 100_000_000, "deviation");
        AddOccupancy();
        foreach (var shared in schedule.Circuits.Where(circuit => circuit.Multiwire is not null).GroupBy(circuit => circuit.Multiwire))
            AddSideBySide([.. shared.Select(circuit => circuit.Ordinal)]);
        AddLegs();
        var moved = _choices.SelectMany((choices, ordinal) => choices.Where(choice => choice.Top != _schedule.Circuits[ordinal].Space));
        _model.Add(LinearExpr.Sum(moved.Select(choice => choice.Here)) <= moves);
        _model.Minimize(_deviation);
    }

    /// <summary>The least imbalance of the connected load in per cent with at most so many moves; for loads in whole VA.</summary>
    public static decimal Least(Schedule schedule, int moves) =>
        Least(schedule, moves, TimeSpan.MaxValue) ?? throw new InvalidOperationException("CP-SAT ended without an answer.");

    /// <summary>The same; nothing where it is not proven within so long.</summary>
    public static decimal? Least(Schedule schedule, int moves, TimeSpan longest)
    {
        using var solver = new CpSolver { StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:1 max_time_in_seconds:{longest.TotalSeconds}") };
        var status = solver.Solve(new ConstraintModel(schedule, moves)._model);
        if (status is CpSolverStatus.Feasible or CpSolverStatus.Unknown) return null;
        if (status != CpSolverStatus.Optimal) throw new InvalidOperationException($"CP-SAT ended with {status}.");
        var total = BalanceGauge.Rows(schedule, BalanceBy.Connected)[0].Sum();
        return total == 0 ? 0 : 100 * (decimal)solver.ObjectiveValue / (Scale * total);
    }

    /// <summary>Sixths of a VA: halves and thirds come out whole.</summary>
    private const int Scale = 6;

    private List<(SpaceNumber, BoolVar)> ChoicesOf(Circuit circuit)
    {
        var tops =
            from number in Enumerable.Range(1, _schedule.Panel.Spaces)
            from half in circuit.Space.IsHalf ? (SpaceHalf[])[SpaceHalf.A, SpaceHalf.B] : [SpaceHalf.Whole]
            let top = new SpaceNumber(number, half)
            where circuit.Fixed ? top == circuit.Space : circuit.Breaker.SpacesFrom(top).All(space => Lawful.Exists(_schedule, space))
            select (top, _model.NewBoolVar($"c{circuit.Ordinal}@{top}"));
        var choices = tops.ToList();
        _model.AddExactlyOne(choices.Select(choice => (ILiteral)choice.Item2));
        return choices;
    }

    private void AddOccupancy()
    {
        foreach (var slot in from space in Enumerable.Range(1, _schedule.Panel.Spaces) from half in (SpaceHalf[])[SpaceHalf.A, SpaceHalf.B] select new SpaceNumber(space, half))
        {
            _model.AddAtMostOne(
                from circuit in _schedule.Circuits
                from choice in _choices[circuit.Ordinal]
                where circuit.Breaker.SpacesFrom(choice.Top).Any(slot.Overlaps)
                select (ILiteral)choice.Here);
        }
    }

    /// <summary>Of two with one neutral: where the one sits, the other is right above or below.</summary>
    private void AddSideBySide(int[] members)
    {
        foreach (var one in members)
        {
            foreach (var (top, here) in _choices[one])
            {
                var near = members.Where(other => other != one).SelectMany(other => _choices[other])
                    .Where(choice => Math.Abs(choice.Top.Number - top.Number) == 2).Select(choice => (ILiteral)choice.Here);
                _model.AddBoolOr([here.Not(), .. near]);
            }
        }
    }

    private void AddLegs()
    {
        var system = _schedule.Panel.System;
        var total = (long)decimal.Round(Scale * BalanceGauge.Rows(_schedule, BalanceBy.Connected)[0].Sum());
        foreach (var leg in system.Legs)
        {
            var load = LinearExpr.Sum(
                from circuit in _schedule.Circuits
                from choice in _choices[circuit.Ordinal]
                let part = PartOn(circuit with { Space = choice.Top }, leg)
                where part != 0
                select choice.Here * part);
            _model.Add((load * system.Legs.Length) - total <= _deviation);
            _model.Add((load * system.Legs.Length) - total >= -1 * _deviation);
        }
    }

    private long PartOn(Circuit circuit, Leg leg) =>
        (long)decimal.Round(Scale * BalanceGauge.Rows(_schedule with { Circuits = [circuit with { Ordinal = 0 }] }, BalanceBy.Connected)[0][(int)leg]);
}
