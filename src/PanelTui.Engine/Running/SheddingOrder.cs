using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running;

/// <summary>
/// Which circuits go next: the lowest `priority` first, then those without a number; of equals the one that takes most. Circuits
/// whose handles are tied go together, at the turn of the last of them.
/// </summary>
/// <param name="all">Every circuit of the panel.</param>
internal sealed class SheddingOrder(ImmutableArray<Circuit> all)
{
    /// <summary>Empty where none takes anything.</summary>
    /// <param name="loads">What still runs and may go.</param>
    /// <param name="takes">How much of the limit that is passed a load takes.</param>
    public ImmutableArray<Circuit> Next(IEnumerable<PlacedLoad> loads, Func<PlacedLoad, decimal> takes)
    {
        var own = loads.GroupBy(load => load.Circuit.Ordinal)
            .ToDictionary(one => one.Key, one => (one.First().Circuit, Takes: one.Sum(takes)));
        return own.Values
            .Where(one => one.Takes > 0)
            .Select(one => Together(one.Circuit, own))
            .OrderBy(one => one.Circuits.Max(circuit => circuit.Priority ?? int.MaxValue))
            .ThenByDescending(one => one.Takes)
            .ThenBy(one => one.Circuits[0].Ordinal)
            .Select(one => one.Circuits)
            .FirstOrDefault([]);
    }

    private (ImmutableArray<Circuit> Circuits, decimal Takes) Together(Circuit circuit, Dictionary<int, (Circuit Circuit, decimal Takes)> own)
    {
        var together = HandleTie.Moves(circuit, all).Where(one => own.ContainsKey(one.Ordinal)).ToImmutableArray();
        return (together, together.Sum(one => own[one.Ordinal].Takes));
    }
}
