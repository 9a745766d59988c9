namespace PanelTui.Engine.Balance;

/// <summary>The sets of moves by cost, made when they are asked for.</summary>
internal sealed class MoveTables(MovePiece[] pieces, int width, int legs)
{
    /// <summary>Beyond this a table would fill the memory of a small machine: about 200 bytes a set.</summary>
    private const int LargestTable = 2_000_000;

    private readonly int _dearest = pieces.SelectMany(piece => piece.Options).Select(option => option.Cost).DefaultIfEmpty(0).Max();
    private readonly List<MoveSets?> _byCost = [new MoveSets(width, legs)];

    public MovePiece[] Pieces => pieces;

    /// <summary>All sets of moves of this cost; nothing where they are too many, or where the search was stopped.</summary>
    public MoveSets? Of(int cost, CancellationToken stop)
    {
        while (_byCost.Count <= cost) _byCost.Add(Make(_byCost.Count, _byCost.Count, stop));
        return stop.IsCancellationRequested ? null : _byCost[cost];
    }

    /// <summary>Of the sets of this cost those that cost less than <paramref name="half"/> without their last option.</summary>
    public MoveSets? Firsts(int cost, int half, CancellationToken stop)
    {
        if (cost == half) return Of(cost, stop);
        return Of(half - 1, stop) is null ? null : Make(cost, half, stop);
    }

    /// <summary>The options of a set, last one first.</summary>
    public IEnumerable<MoveOption> Chosen(MoveSets.Link link)
    {
        yield return pieces[link.Last].Options[link.Option];
        while (link.RestCost > 0)
        {
            link = _byCost[link.RestCost]!.Links[link.Rest];
            yield return pieces[link.Last].Options[link.Option];
        }
    }

    /// <summary>Whether a set may begin with a piece after another set: twins are taken in their order, and so are their options.</summary>
    public bool Follows(MoveSets.Link before, int piece, int option) =>
        piece > before.Last && (!pieces[piece].Twin || (before.Last == piece - 1 && option >= before.Option));

    /// <param name="below">What a set costs without its last option is less.</param>
    private MoveSets? Make(int cost, int below, CancellationToken stop)
    {
        var made = new MoveSets(width, legs);
        for (var last = cost - below + 1; last <= Math.Min(_dearest, cost); last++)
            if (!Extend(made, cost - last, last, stop)) return null;
        return made;
    }

    private bool Extend(MoveSets made, int restCost, int last, CancellationToken stop)
    {
        if (restCost == 0)
        {
            Begin(made, last);
            return true;
        }

        if (_byCost[restCost] is not { } rests) return false;
        for (var rest = 0; rest < rests.Count; rest++)
        {
            if (made.Count > LargestTable || ((rest & 1023) == 0 && stop.IsCancellationRequested)) return false;
            for (var piece = rests.Links[rest].Last + 1; piece < pieces.Length; piece++)
                AddOptions(made, rests, rest, restCost, piece, last);
        }
        return true;
    }

    /// <summary>Sets of one move: a twin may stand first here, for it may follow a set of the other half.</summary>
    private void Begin(MoveSets made, int cost)
    {
        for (var piece = 0; piece < pieces.Length; piece++)
        {
            for (var number = 0; number < pieces[piece].Options.Length; number++)
                if (pieces[piece].Options[number].Cost == cost) made.Add(null, 0, 0, piece, number, pieces[piece].Options[number]);
        }
    }

    private void AddOptions(MoveSets made, MoveSets rests, int rest, int restCost, int piece, int cost)
    {
        for (var number = 0; number < pieces[piece].Options.Length; number++)
        {
            var option = pieces[piece].Options[number];
            if (option.Cost == cost && Follows(rests.Links[rest], piece, number)) made.Add(rests, rest, restCost, piece, number, option);
        }
    }
}
