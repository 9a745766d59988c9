namespace PanelTui.Editing;

/// <summary>How long work on the open file takes, so that the editor can say what it is busy with before it goes on.</summary>
/// <remarks>
/// Work of a kind is predicted by the last time it was done, and before that by the reading of the file: nothing is done to a file
/// without reading it once. A file as long as a schedule usually is stays far below <see cref="Noticed"/> and is told nothing.
/// </remarks>
internal sealed class Pace(TimeProvider clock)
{
    private readonly Dictionary<string, TimeSpan> _last = new(StringComparer.Ordinal);
    private TimeSpan _reading;
    private bool _isWorking;

    /// <summary>Work that takes this long or longer is announced.</summary>
    public static TimeSpan Noticed { get; } = TimeSpan.FromSeconds(0.3);

    /// <summary>Told what long work is about to begin, and null when it is done.</summary>
    public event Action<string?>? Announced;

    /// <summary>Reads the file for the first time, which predicts what all else will take.</summary>
    public T Reading<T>(Func<T> read)
    {
        var began = clock.GetTimestamp();
        var result = read();
        _reading = clock.GetElapsedTime(began);
        return result;
    }

    /// <summary>Does the work, announced beforehand where it is likely to be long; work inside other work is part of that.</summary>
    /// <param name="what">What the editor is busy with, such as "Applying the change ...".</param>
    public T Of<T>(string what, Func<T> work)
    {
        if (_isWorking) return work();
        _isWorking = true;
        var isLong = _last.GetValueOrDefault(what, _reading) >= Noticed;
        if (isLong) Announced?.Invoke(what);
        var began = clock.GetTimestamp();
        try
        {
            return work();
        }
        finally
        {
            _last[what] = clock.GetElapsedTime(began);
            _isWorking = false;
            if (isLong) Announced?.Invoke(null);
        }
    }

    /// <summary>As the other, for work that gives nothing back.</summary>
    public void Of(string what, Action work) => Of(what, () =>
    {
        work();
        return true;
    });
}
