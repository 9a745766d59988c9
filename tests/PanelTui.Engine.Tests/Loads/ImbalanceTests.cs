using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>Largest deviation from the mean over the mean, the form of NEMA MG 1.</summary>
public class ImbalanceTests
{
    /// <summary>
    /// D01: eng-tips.com, "Sequence angles imbalance", 2011 text of MG 1, printed 1.1 %. D02: a motor-protection manual, printed
    /// 2.5 % after cutting 5.3 / 208.3. D03: a heat-pump manual, printed 1.8 % from a rounded mean. D04: a chiller manual, printed
    /// 1.7 %. The printed values seen, the unrounded ones derived; D02 and D03 round on the way, hence the tolerance.
    /// </summary>
    [Theory]
    [InlineData(462, 463, 455, 1.087, 1.1)]
    [InlineData(203, 210, 212, 2.56, 2.5)]
    [InlineData(220, 216, 213, 1.69, 1.8)]
    [InlineData(243, 236, 238, 1.674, 1.7)]
    public void Three_voltages_deviate_as_published(int a, int b, int c, double exact, double printed)
    {
        var percent = (double)Imbalance.Of(a, b, c).Value;
        percent.ShouldBe(exact, 0.005);
        percent.ShouldBe(printed, 0.12);
    }

    /// <summary>D05: the leg totals of Annex D, example D1(b). Derived.</summary>
    [Fact]
    public void On_two_legs_it_is_half_of_difference_over_mean() =>
        ((double)Imbalance.Of(99, 104).Value).ShouldBe(100 * 5 / 101.5 / 2, 1e-9);

    /// <summary>D06: a trade forum's question, forums.mikeholt.com, "Panelboard phase load balancing". Derived.</summary>
    [Fact]
    public void A_panel_of_100_150_and_200_A_is_33_percent_out() =>
        ((double)Imbalance.Of(100, 150, 200).Value).ShouldBe(33.333, 0.001);

    [Fact]
    public void No_load_at_all_is_in_balance() => Imbalance.Of(0, 0).ShouldBe(Percent.Zero);

    [Fact]
    public void One_idle_leg_of_two_is_100_percent_out() => Imbalance.Of(50, 0).ShouldBe(100.Pct);

    [Fact]
    public void One_leg_alone_is_always_in_balance() =>
        Sketch.Of(PanelSystem.OneLeg, Sketch.OnePole(1, Sketch.Of(900.VA))).Assessed()
            .Connected.Imbalance.ShouldBe(Percent.Zero);
}
