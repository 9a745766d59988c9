using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;

namespace PanelTui.Pages;

/// <summary>A scenario with circuits switched on and off by hand; nothing of it is written.</summary>
internal sealed class Trial
{
    private readonly HashSet<int> _switched = [];
    private int _scenario;

    /// <summary>Counts up whenever the trial changes.</summary>
    public int Version { get; private set; }

    /// <summary>`Harvest night`, or with what was switched, `Harvest night, a trial with 2 switched`.</summary>
    public string Called(Session session) =>
        ScenarioOf(session).Name + (_switched.Count == 0 ? "" : $", a trial with {_switched.Count} switched");

    /// <summary>Everything on the panel first, then the scenarios of the file.</summary>
    public void Turn(Session session, int by)
    {
        var count = session.Schedule.Scenarios.Length + 1;
        _scenario = (_scenario + by + count) % count;
        _switched.Clear();
        Version++;
    }

    /// <summary>Circuits whose handles are tied go the same way.</summary>
    /// <returns>What was said to be switched, the circuit first.</returns>
    public ImmutableArray<Circuit> Switch(Session session, Circuit circuit)
    {
        var on = Run(session).Circuits.Select(one => one.Ordinal).ToHashSet();
        var together = HandleTie.Moves(circuit, session.Schedule.Circuits);
        foreach (var one in together.Where(one => on.Contains(one.Ordinal) == on.Contains(circuit.Ordinal)))
        {
            if (!_switched.Remove(one.Ordinal)) _switched.Add(one.Ordinal);
        }

        Version++;
        return together;
    }

    public ScenarioRun Run(Session session)
    {
        var (schedule, loads) = (session.Schedule, session.Assessment.Connected.Loads);
        var whole = ScenarioRun.Of(ScenarioOf(session), schedule, loads);
        if (_switched.Count == 0) return whole;
        var on = whole.Circuits.Select(circuit => circuit.Ordinal).ToHashSet();
        on.SymmetricExceptWith(_switched);
        return ScenarioRun.OfCircuits(whole.Scenario, [.. schedule.Circuits.Where(circuit => on.Contains(circuit.Ordinal))], schedule, loads);
    }

    private Scenario ScenarioOf(Session session) => _scenario > 0 && _scenario <= session.Schedule.Scenarios.Length
        ? session.Schedule.Scenarios[_scenario - 1]
        : Scenario.AllOnStandby;
}
