using System.Drawing;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

public class TtySizeTests
{
    private readonly SteppedClock _clock = new();
    private readonly List<Size?> _reported = [];
    private readonly TtySize _size;
    private Size _window = new(80, 24);

    public TtySizeTests()
    {
        _size = new TtySize(() => _window, _clock);
        _size.SizeChanged += (_, change) => _reported.Add(change.Size);
    }

    [Fact]
    public void A_size_that_stays_is_not_reported()
    {
        After(1_000);
        _reported.ShouldBeEmpty();
        _size.IsPending.ShouldBeFalse();
    }

    [Fact]
    public void A_new_size_is_reported_once_it_has_rested()
    {
        _window = new Size(100, 30);
        After(0);
        _size.IsPending.ShouldBeTrue();
        After(30);
        _reported.ShouldBe([new Size(100, 30)]);
        _size.IsPending.ShouldBeFalse();
    }

    [Fact]
    public void A_dragged_edge_is_reported_a_few_times_a_second()
    {
        for (var width = 81; width <= 180; width++)
        {
            _window = new Size(width, 24);
            After(10);
        }

        After(150);
        _reported.Count.ShouldBeInRange(5, 8);
        _reported[^1].ShouldBe(new Size(180, 24));
    }

    [Fact]
    public void A_size_that_changes_back_is_not_reported()
    {
        _window = new Size(100, 30);
        After(0);
        _window = new Size(80, 24);
        After(100);
        _reported.ShouldBeEmpty();
    }

    private void After(int milliseconds)
    {
        _clock.Advance(TimeSpan.FromMilliseconds(milliseconds));
        _size.Poll();
    }
}
