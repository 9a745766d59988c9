namespace PanelTui.Engine.Balance;

/// <summary>Every set of moves of one cost, as rows of one table: what it sums to, and how it was put together.</summary>
/// <remarks>
/// A set is written in the order of the pieces, so it comes up once. A larger set is a smaller one of another table and one option more.
/// </remarks>
internal sealed class MoveSets(int width, int legs)
{
    public int Count { get; private set; }

    public int Width { get; } = width;

    public int Legs { get; } = legs;

    public long[] Sums { get; private set; } = new long[width * 64];

    public short[] Flows { get; private set; } = new short[legs * 64];

    public Link[] Links { get; private set; } = new Link[64];

    /// <summary>How a set ends and where the rest of it stands; no rest where <paramref name="RestCost"/> is 0.</summary>
    internal readonly record struct Link(int Rest, short RestCost, short First, short FirstOption, short Last, short Option);

    public ReadOnlySpan<long> SumsAt(int index) => Sums.AsSpan(index * Width, Width);

    public ReadOnlySpan<short> FlowAt(int index) => Flows.AsSpan(index * Legs, Legs);

    /// <summary>Adds a set: the one at <paramref name="rest"/> of another table, and an option of a later piece.</summary>
    public void Add(MoveSets? other, int rest, int restCost, int piece, int number, MoveOption option)
    {
        Grow();
        for (var at = 0; at < Width; at++)
            Sums[(Count * Width) + at] = (other is null ? 0 : other.Sums[(rest * Width) + at]) + option.Delta[at];
        for (var leg = 0; leg < Legs; leg++)
            Flows[(Count * Legs) + leg] = (short)((other is null ? 0 : other.Flows[(rest * Legs) + leg]) + option.Flow[leg]);
        var first = other is null ? piece : other.Links[rest].First;
        var firstOption = other is null ? number : other.Links[rest].FirstOption;
        Links[Count++] = new Link(rest, (short)restCost, (short)first, (short)firstOption, (short)piece, (short)number);
    }

    private void Grow()
    {
        if (Count < Links.Length) return;
        var size = Links.Length * 2;
        var (sums, flows, links) = (new long[size * Width], new short[size * Legs], new Link[size]);
        Sums.CopyTo(sums, 0);
        Flows.CopyTo(flows, 0);
        Links.CopyTo(links, 0);
        (Sums, Flows, Links) = (sums, flows, links);
    }
}
