namespace PanelTui.Documents.Intents;

/// <summary>Removes several circuits as one step, and their ids from the scenarios that name them.</summary>
public static class RemoveCircuits
{
    public static Intended In(Snapshot snapshot, IEnumerable<int> ordinals)
    {
        var gone = ordinals.Distinct().OrderDescending().ToList();
        return gone is [var one]
            ? RemoveCircuit.In(snapshot, one)
            : InOrder.Of(snapshot, $"Remove {gone.Count} breakers", gone.Select(ordinal => (Func<Snapshot, Intended>)(now => RemoveCircuit.In(now, ordinal))));
    }
}
