namespace PanelTui.Tests;

/// <summary>A clock whose timers ring when the test says so.</summary>
internal sealed class HandClock : TimeProvider
{
    private readonly List<Alarm> _alarms = [];

    /// <summary>How long was to be waited, each time.</summary>
    public List<TimeSpan> Waits { get; } = [];

    /// <summary>The time for which every timer that is set has waited goes by.</summary>
    public void Ring()
    {
        foreach (var alarm in _alarms) alarm.Ring();
    }

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => new(2026, 3, 14, 14, 3, 0, TimeSpan.Zero);

    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period)
    {
        var alarm = new Alarm(this, () => callback(state));
        _alarms.Add(alarm);
        return alarm;
    }

    private sealed class Alarm(HandClock clock, Action callback) : ITimer
    {
        private bool _isSet;

        public bool Change(TimeSpan dueTime, TimeSpan period)
        {
            _isSet = dueTime != Timeout.InfiniteTimeSpan;
            if (_isSet) clock.Waits.Add(dueTime);
            return true;
        }

        public void Ring()
        {
            if (!_isSet) return;
            _isSet = false;
            callback();
        }

        public void Dispose() => _isSet = false;

        public ValueTask DisposeAsync()
        {
            Dispose();
            return ValueTask.CompletedTask;
        }
    }
}
