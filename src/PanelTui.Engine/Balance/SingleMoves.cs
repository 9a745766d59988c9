namespace PanelTui.Engine.Balance;

/// <summary>
/// How many single breakers have to move at least while shapes are being placed: of each kind as many as are sent to another leg, or
/// as many as a shape has pushed away where those are more, for the pushed ones can be the ones that go.
/// </summary>
internal sealed class SingleMoves(int[] kinds)
{
    private readonly int[] _covers = new int[kinds.Length];
    private readonly int[] _wanted = new int[kinds.Length];
    private readonly int[] _pushed = new int[kinds.Length];

    /// <summary>The least number of moves of singles.</summary>
    public int Least { get; private set; }

    public void Start(IEnumerable<int> wanted)
    {
        Array.Clear(_covers);
        Array.Clear(_wanted);
        Array.Clear(_pushed);
        Least = 0;
        foreach (var circuit in wanted)
        {
            _wanted[kinds[circuit]]++;
            Least++;
        }
    }

    public void Cover(int[] singles)
    {
        foreach (var single in singles)
        {
            if (_covers[single]++ > 0) continue;
            var kind = kinds[single];
            if (++_pushed[kind] > _wanted[kind]) Least++;
        }
    }

    public void Uncover(int[] singles)
    {
        foreach (var single in singles)
        {
            if (--_covers[single] > 0) continue;
            var kind = kinds[single];
            if (_pushed[kind]-- > _wanted[kind]) Least--;
        }
    }
}
