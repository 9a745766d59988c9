using System.Runtime.CompilerServices;

namespace PanelTui.Testing;

/// <summary>For checks of every member of a list, which an empty list would pass.</summary>
internal static class NeverEmpty
{
    /// <summary>Returns the members. Fails the test where there are none.</summary>
    public static IReadOnlyList<T> AtLeastOne<T>(
        this IEnumerable<T> members, [CallerArgumentExpression(nameof(members))] string list = "")
    {
        T[] all = [.. members];
        all.ShouldNotBeEmpty($"{list} is empty, so a check of each of its members checks nothing");
        return all;
    }

    /// <summary>Returns the lines that are not empty. Fails the test where there are none.</summary>
    public static IReadOnlyList<string> Lines(
        this string text, [CallerArgumentExpression(nameof(text))] string name = "") =>
        text.Split('\n', StringSplitOptions.RemoveEmptyEntries).AtLeastOne(name);
}
