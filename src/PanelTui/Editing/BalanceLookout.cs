using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Editing;

/// <summary>Looks for a better balance beside the screen's thread; what it has found so far can be read at any time.</summary>
internal sealed class BalanceLookout : IDisposable
{
    /// <summary>A search as long as this is not waited for.</summary>
    private const int Unnoticed = 80;

    private readonly CancellationTokenSource _stop = new(TimeSpan.FromSeconds(10));
    private readonly Task _search;
    private volatile BalanceFrontier? _found;

    /// <param name="wake">Told from another thread when there is more to see.</param>
    public BalanceLookout(Schedule schedule, BalanceBy by, Action wake)
    {
        Schedule = schedule;
        var token = _stop.Token;
        _search = Task.Run(() =>
        {
            void Keep(BalanceFrontier found)
            {
                _found = found;
                wake();
            }

            Keep(BalanceSearch.Of(schedule, by, Keep, token));
        });
        _search.Wait(Unnoticed, CancellationToken.None);
    }

    /// <summary>The schedule that is looked at.</summary>
    public Schedule Schedule { get; }

    /// <summary>Nothing until one move has been looked at.</summary>
    public BalanceFrontier? Found => _found;

    public bool IsOver => _search.IsCompleted;

    public void Dispose()
    {
        _stop.Cancel();
        if (_search.Wait(Unnoticed, CancellationToken.None)) _stop.Dispose();
    }
}
