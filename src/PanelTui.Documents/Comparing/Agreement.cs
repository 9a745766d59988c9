using System.Collections.Immutable;

namespace PanelTui.Documents.Comparing;

/// <summary>Which entries of two versions agree in one mark that no other entry of either version has.</summary>
internal sealed class Agreement
{
    private readonly int[] _after;
    private readonly int[] _before;

    public Agreement(ImmutableArray<Identity> before, ImmutableArray<Identity> after, Func<Identity, string?> mark)
    {
        _after = [.. Enumerable.Repeat(-1, before.Length)];
        _before = [.. Enumerable.Repeat(-1, after.Length)];
        var right = OnlyOnes(after, mark);
        foreach (var (text, one) in OnlyOnes(before, mark))
        {
            if (!right.TryGetValue(text, out var other)) continue;
            _after[one] = other;
            _before[other] = one;
        }
    }

    /// <summary>The later entry that agrees; -1 for none.</summary>
    public int After(int before) => _after[before];

    /// <summary>The earlier entry that agrees; -1 for none.</summary>
    public int Before(int after) => _before[after];

    private static Dictionary<string, int> OnlyOnes(ImmutableArray<Identity> all, Func<Identity, string?> mark) =>
        Enumerable.Range(0, all.Length)
            .Where(index => mark(all[index]) is not null)
            .GroupBy(index => mark(all[index])!)
            .Where(group => group.Count() == 1)
            .ToDictionary(group => group.Key, group => group.Single());
}
