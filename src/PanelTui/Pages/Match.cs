namespace PanelTui.Pages;

/// <summary>What is left of a list after some letters were typed.</summary>
internal static class Match
{
    /// <summary>Those in whose text every typed word occurs, in whatever order and case; the list's own order is kept.</summary>
    public static IEnumerable<T> Of<T>(IEnumerable<T> all, Func<T, string> text, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return all.Where(one => Array.TrueForAll(words, word => text(one).Contains(word, StringComparison.OrdinalIgnoreCase)));
    }
}
