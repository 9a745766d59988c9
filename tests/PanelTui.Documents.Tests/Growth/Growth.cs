using System.Globalization;

namespace PanelTui.Documents.Tests.Growth;

/// <summary>Whether work grows with the size of a file, told by the bytes it allocates: no clock, so it is the same on every machine.</summary>
internal static class Growth
{
    /// <summary>The step from 2n to 4n is twice that from n to 2n where work is linear, and four times where it is quadratic.</summary>
    private const double MostSteeper = 3;

    /// <summary>Bytes that a list which doubles its room, or a first use, may add.</summary>
    private const long Slack = 64 * 1024;

    /// <summary>Characters of the first text: enough to tell, few enough to try every kind of work on every kind of file.</summary>
    private const int Enough = 6_000;

    /// <summary>The size that a kind of file is looked at with first; four times that is within its limits.</summary>
    public static int First(LargeFile file)
    {
        var n = Math.Max(1, Math.Min(30, file.Most / 8));
        while (n > 1 && file.Text(n).Length > Enough) n /= 2;
        return n;
    }

    /// <summary>
    /// The kinds of work to try on a file: each kind meets a third of the files and each file a third of the kinds, so that every build can
    /// afford it; with PANELTUI_CAMPAIGN set, all of them.
    /// </summary>
    public static IEnumerable<T> Share<T>(LargeFile file, IReadOnlyList<T> work)
    {
        var isWhole = Environment.GetEnvironmentVariable("PANELTUI_CAMPAIGN") is { Length: > 0 };
        var row = LargeFile.All.Index().First(one => one.Item.Name == file.Name).Index;
        return work.Where((_, column) => isWhole || (row + column) % 3 == 0);
    }

    /// <summary>Null where the work is linear, else how it grew.</summary>
    /// <param name="file">The kind of file.</param>
    /// <param name="workOn">Prepares the work on one text of that kind.</param>
    public static string? WhyNotLinear(LargeFile file, Func<string, Action> workOn)
    {
        var n = First(file);
        workOn(file.Text(n))(); // what is made once for the whole program
        long[] bytes = [Allocated(workOn(file.Text(n))), Allocated(workOn(file.Text(2 * n))), Allocated(workOn(file.Text(4 * n)))];
        var (first, second) = (bytes[1] - bytes[0], bytes[2] - bytes[1]);
        return second <= (MostSteeper * Math.Max(0, first)) + Slack
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{bytes[0]:N0}, {bytes[1]:N0} and {bytes[2]:N0} bytes at {n}, {2 * n} and {4 * n}");
    }

    private static long Allocated(Action work)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        work();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
