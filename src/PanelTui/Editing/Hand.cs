using System.Collections.Frozen;
using PanelTui.Documents;
using PanelTui.Documents.Intents;
using PanelTui.Engine.Panels;

namespace PanelTui.Editing;

/// <summary>A breaker in the hand: where it would land with the cursor where it is, what gives way, or why it does not fit.</summary>
internal sealed record Hand(Circuit Circuit, Relocation Plan, FrozenSet<SpaceNumber> Landing, string Message)
{
    /// <summary>The drop as an intent; nothing where it does not fit, or would change nothing.</summary>
    public Func<Snapshot, Intended>? Change => Plan.Hops.IsEmpty ? null : snapshot => MoveCircuits.In(snapshot, Plan.Hops);

    public static Hand Of(Session session, Circuit circuit)
    {
        var to = TargetOf(session, circuit);
        var plan = Relocation.Of(session.Schedule, circuit, to);
        var landing = plan.WhyNot is null ? circuit.Breaker.SpacesFrom(to).ToFrozenSet() : FrozenSet<SpaceNumber>.Empty;
        return new Hand(circuit, plan, landing, MessageOf(session.Schedule, circuit, plan, to));
    }

    /// <summary>A tandem breaker lands in a half where halves are allowed; any other takes the space, or the half under the cursor.</summary>
    private static SpaceNumber TargetOf(Session session, Circuit circuit)
    {
        var cursor = session.Cursor;
        var allowed = session.Schedule.Panel.TandemSpaces.Contains(cursor.Number);
        return cursor.IsHalf || !circuit.Space.IsHalf || !allowed ? cursor : cursor.With(circuit.Space.Half);
    }

    private static string MessageOf(Schedule schedule, Circuit circuit, Relocation plan, SpaceNumber to)
    {
        if (plan.WhyNot is { } why) return $"Does not fit: {why}";
        if (plan.Hops.IsEmpty) return $"{Presentation.CircuitText.NameOf(circuit)} is in the hand: carry it with the arrows";
        var moves = plan.Hops.Skip(1)
            .Select(hop => $"{Presentation.CircuitText.NameOf(schedule.Circuits[hop.Ordinal])} to {hop.To}").ToList();
        return moves.Count == 0
            ? $"Drop {Presentation.CircuitText.NameOf(circuit)} at {to}"
            : $"Drop {Presentation.CircuitText.NameOf(circuit)} at {to}; {string.Join(", ", moves)}";
    }
}
