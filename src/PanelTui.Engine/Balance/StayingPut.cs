using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Balance;

/// <summary>Why a breaker is not moved for a better balance.</summary>
public static class StayingPut
{
    /// <summary>More breakers side by side than this are not taken apart.</summary>
    internal const int LargestGroup = 3;

    /// <summary>The reason of each circuit by its ordinal; nothing for those that may move.</summary>
    internal static string?[] Of(Schedule schedule, int[] groups)
    {
        var circuits = schedule.Circuits;
        var reasons = circuits.Select(circuit => Alone(schedule, circuit)).ToArray();
        MarkShared(schedule, reasons);
        foreach (var group in groups.Where(group => group >= 0).Distinct().ToList())
        {
            var members = circuits.Where(circuit => groups[circuit.Ordinal] == group).ToList();
            var reason = Together(schedule, members, reasons);
            foreach (var circuit in members.Where(_ => reason is not null)) reasons[circuit.Ordinal] ??= reason;
        }
        return reasons;
    }

    private static string? Alone(Schedule schedule, Circuit circuit)
    {
        if (circuit.Fixed) return "written down as fixed";
        if (circuit.Breaker.Poles is < 1 or > 3 || circuit.Breaker.Poles > schedule.Panel.System.MostPoles) return "more poles than the panel has legs";
        if (!circuit.Spaces.All(schedule.Panel.Has)) return "past the last space";
        if (schedule.Transfer?.Kind == TransferKind.Interlock && circuit is { IsSpare: false, Loads.IsEmpty: true })
            return "no loads on it beside an interlock: it may be the back-fed one";
        return null;
    }

    private static void MarkShared(Schedule schedule, string?[] reasons)
    {
        var taken = new Dictionary<int, List<(SpaceNumber Space, int Ordinal)>>();
        foreach (var circuit in schedule.Circuits)
        {
            foreach (var space in circuit.Spaces)
            {
                if (!taken.TryGetValue(space.Number, out var there)) taken[space.Number] = there = [];
                foreach (var other in there.Where(other => other.Space.Overlaps(space)))
                {
                    reasons[circuit.Ordinal] ??= "in a space that another breaker takes too";
                    reasons[other.Ordinal] ??= "in a space that another breaker takes too";
                }
                there.Add((space, circuit.Ordinal));
            }
        }
    }

    private static string? Together(Schedule schedule, List<Circuit> members, string?[] reasons)
    {
        if (members.Exists(circuit => reasons[circuit.Ordinal] is not null)) return "beside one that stays, and joined to it";
        if (members.Count > LargestGroup || members.Exists(circuit => circuit.Breaker.Poles > 1)) return "joined to its neighbours";
        return Neighbours.AreLawful(schedule.Panel.System, members, [.. members.Select(circuit => circuit.Space)])
            ? null
            : "shares a neutral that is not side by side on different legs: mend that first";
    }
}
