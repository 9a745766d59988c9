namespace PanelTui.Documents.Tests;

/// <summary>
/// Random choices that a seed repeats exactly, on every runtime (SplitMix64, public domain, from memory).
/// </summary>
internal sealed class Dice(int seed)
{
    // Not the step of Roll, or neighbouring seeds would give the same sequence, shifted by one.
    private ulong _state = unchecked((ulong)seed * 0xD1342543DE82EF95);

    /// <summary>A number from 0 up to, but not including, the bound.</summary>
    public int Next(int bound) => (int)(Roll() % (ulong)bound);

    public int Next(int first, int bound) => first + Next(bound - first);

    /// <summary>True once in so many throws.</summary>
    public bool One(int of) => Next(of) == 0;

    public T Any<T>(IReadOnlyList<T> from) => from[Next(from.Count)];

    private ulong Roll()
    {
        unchecked
        {
            var z = _state += 0x9E3779B97F4A7C15;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
