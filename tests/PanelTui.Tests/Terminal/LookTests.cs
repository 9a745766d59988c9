using PanelTui.Terminal;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Tests.Terminal;

public class LookTests
{
    public LookTests() => Look.Install();

    public static TheoryData<string> Names => ["Base", "Accent", "Dialog", "Menu", "Error"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_role_keeps_the_terminals_own_ground(string scheme) =>
        Enum.GetValues<VisualRole>().Select(role => LookOf(scheme, role).Background).ShouldAllBe(ground => ground.A == 0);

    [Theory]
    [MemberData(nameof(Names))]
    public void No_role_has_a_colour_the_library_made_up(string scheme) =>
        Enum.GetValues<VisualRole>().Select(role => LookOf(scheme, role).Foreground)
            .ShouldAllBe(letters => letters.A == 0 || letters == Look.Error.Foreground);

    [Theory]
    [MemberData(nameof(Names))]
    public void The_focus_is_seen_without_colour(string scheme) =>
        LookOf(scheme, VisualRole.Focus).Style.ShouldNotBe(LookOf(scheme, VisualRole.Normal).Style);

    [Fact]
    public void A_finding_is_seen_without_colour() =>
        new[] { Look.Error, Look.Warning }.ShouldAllBe(look => look.Style == TextStyle.Bold);

    [Fact]
    public void Each_leg_has_a_colour_of_its_own() =>
        "ABC".Select(leg => Look.Leg(leg).Foreground).Distinct().Count().ShouldBe(3);

    [Theory]
    [InlineData("standard", 3)]
    [InlineData("contrast", 3)]
    [InlineData("plain", 1)]
    public void Each_look_tells_errors_warnings_and_legs_by_more_than_colour(string look, int legs)
    {
        "ABC".Select(leg => Look.LegIn(look, leg)).Distinct().Count().ShouldBe(legs);
        new[] { Look.ErrorIn(look), Look.WarningIn(look) }.ShouldAllBe(it => it.Style.HasFlag(TextStyle.Bold));
        if (look == "plain") Look.ErrorIn(look).Foreground.A.ShouldBe((byte)0);
    }

    [Fact]
    public void A_look_that_is_not_known_is_told() =>
        CommandLine.Ran.Of("--look", "loud", "x.yaml").Error.ShouldContain("contrast");

    [Fact]
    public void Under_the_cursor_a_leg_keeps_its_colour_and_is_reversed() =>
        Look.UnderCursor(Look.Leg('B')).ShouldBe(Look.Leg('B') with { Style = TextStyle.Reverse });

    private static Attribute LookOf(string scheme, VisualRole role) => SchemeManager.GetScheme(scheme).GetAttributeForRole(role);
}
