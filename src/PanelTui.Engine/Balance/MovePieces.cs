namespace PanelTui.Engine.Balance;

/// <summary>Everything that can shift the balance.</summary>
internal static class MovePieces
{
    /// <summary>Twins stand side by side, so that only one of many equal choices has to be looked at.</summary>
    public static MovePiece[] Of(Board board, LoadTable loads)
    {
        var movable = Enumerable.Range(0, board.Count).Where(circuit => board.Staying[circuit] is null).ToList();
        var groups = movable.Where(circuit => board.Groups[circuit] >= 0).GroupBy(circuit => board.Groups[circuit])
            .Select(group => Together(board, loads, [.. group]));
        var alone = movable.Where(circuit => board.Groups[circuit] < 0 && !board.IsSingle(circuit) && !loads.IsNeutral(circuit))
            .Select(circuit => new MovePiece(Alone(board, loads, circuit), false));
        return [.. groups.Concat(alone).Where(piece => piece.Options.Length > 0), .. Singles(board, loads, movable)];
    }

    private static IEnumerable<MovePiece> Singles(Board board, LoadTable loads, List<int> movable)
    {
        MoveOption[]? before = null;
        foreach (var options in movable.Where(circuit => board.IsSingle(circuit) && !loads.IsNeutral(circuit))
            .Select(circuit => Alone(board, loads, circuit))
            .OrderByDescending(options => options.Max(option => option.Delta.Max(Math.Abs)))
            .ThenBy(options => string.Join(' ', options.SelectMany(option => option.Delta).Concat(options.SelectMany(option => option.Flow).Select(part => (long)part)))))
        {
            yield return new MovePiece(options, before is not null && AreTwins(before, options));
            before = options;
        }
    }

    private static bool AreTwins(MoveOption[] one, MoveOption[] other) =>
        one.Zip(other).All(pair => pair.First.Circuits[0].Phase == pair.Second.Circuits[0].Phase
            && pair.First.Delta.AsSpan().SequenceEqual(pair.Second.Delta) && pair.First.Flow.AsSpan().SequenceEqual(pair.Second.Flow));

    private static MoveOption[] Alone(Board board, LoadTable loads, int circuit) =>
    [
        .. Enumerable.Range(0, board.Legs).Where(phase => phase != board.PhaseOf(circuit))
            .Select(phase => Option(board, loads, [(circuit, phase)])),
    ];

    /// <summary>Every other assignment of legs to the members; whether they fit side by side shows when they are placed.</summary>
    private static MovePiece Together(Board board, LoadTable loads, int[] members)
    {
        var options = new List<MoveOption>();
        for (var number = 0; number < Math.Pow(board.Legs, members.Length); number++)
        {
            var rest = number;
            var changed = new List<(int Circuit, int Phase)>();
            foreach (var member in members)
            {
                if (rest % board.Legs != board.PhaseOf(member)) changed.Add((member, rest % board.Legs));
                rest /= board.Legs;
            }
            var option = Option(board, loads, [.. changed]);
            if (!Array.TrueForAll(option.Delta, part => part == 0) && !MeetOnOneLeg(board, members, changed)) options.Add(option);
        }
        return new MovePiece([.. options], false);
    }

    private static bool MeetOnOneLeg(Board board, int[] members, List<(int Circuit, int Phase)> changed)
    {
        int PhaseOf(int member) => changed.Exists(move => move.Circuit == member)
            ? changed.Find(move => move.Circuit == member).Phase
            : board.PhaseOf(member);
        return members.Where(member => board.Schedule.Circuits[member].Multiwire is not null)
            .GroupBy(member => (PhaseOf(member), board.Schedule.Circuits[member].Multiwire)).Any(leg => leg.Count() > 1);
    }

    private static MoveOption Option(Board board, LoadTable loads, (int Circuit, int Phase)[] moves)
    {
        var delta = new long[loads.Width];
        var flow = new int[board.Legs];
        foreach (var (circuit, phase) in moves)
        {
            var part = loads.DeltaOf(circuit, phase);
            for (var leg = 0; leg < delta.Length; leg++) delta[leg] += part[leg];
            AddFlow(board, circuit, phase, flow);
        }
        return new MoveOption(moves, delta, flow);
    }

    private static void AddFlow(Board board, int circuit, int phase, int[] flow)
    {
        var breaker = board.Schedule.Circuits[circuit];
        var slots = breaker.Space.IsHalf ? 1 : Board.SlotsOfSpace;
        for (var pole = 0; pole < breaker.Breaker.Poles; pole++)
        {
            flow[(board.PhaseOf(circuit) + pole) % board.Legs] -= slots;
            flow[(phase + pole) % board.Legs] += slots;
        }
    }
}
