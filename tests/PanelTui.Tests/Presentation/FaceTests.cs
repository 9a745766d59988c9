using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Tests.Presentation;

public class FaceTests
{
    private static readonly Face Panel = Face.Of(Shed.Snapshot().Schedule!);

    [Fact]
    public void Odd_spaces_hang_left_and_even_right_with_one_leg_behind_both() =>
        Panel.Lines.Take(3).Select(line => $"{line.Left!.Space} {line.Leg} {line.Right!.Space}").ShouldBe(["1 A 2", "3 B 4", "5 A 6"]);

    [Fact]
    public void A_two_pole_breaker_shows_on_both_of_its_rows()
    {
        Panel.At(new SpaceNumber(2))!.IsTop.ShouldBeTrue();
        Panel.At(new SpaceNumber(4))!.Circuit!.Name.ShouldBe("Well pump");
        Panel.At(new SpaceNumber(4))!.IsBottom.ShouldBeTrue();
    }

    [Fact]
    public void Tandem_halves_share_a_row_and_its_leg()
    {
        Panel.Lines[^2].Left!.Space.ToString().ShouldBe("11a");
        Panel.Lines[^1].Left!.Space.ToString().ShouldBe("11b");
        Panel.Lines[^1].Left!.Leg.ShouldBe(Panel.Lines[^2].Left!.Leg);
        Panel.Lines[^1].Right.ShouldBeNull();
    }

    [Fact]
    public void The_cursor_walks_over_halves_and_never_leaves_the_panel()
    {
        Walk.By(Panel, new SpaceNumber(9), 1).ToString().ShouldBe("11a");
        Walk.By(Panel, new SpaceNumber(9), 99).ToString().ShouldBe("11b");
        Walk.Across(Panel, new SpaceNumber(11, SpaceHalf.B), left: false).ToString().ShouldBe("12");
        Walk.By(Panel, new SpaceNumber(1), -5).ToString().ShouldBe("1");
    }

    [Fact]
    public void Two_circuits_in_one_space_are_marked()
    {
        var crowded = Shed.Snapshot(Shed.Text.Replace("space: 3,", "space: 4,", StringComparison.Ordinal));
        Face.Of(crowded.Schedule!).At(new SpaceNumber(4))!.Crowded.ShouldBeTrue();
    }
}
