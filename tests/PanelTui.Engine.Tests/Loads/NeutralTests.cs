using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>What the neutral carries follows from how far apart the legs stand.</summary>
public class NeutralTests
{
    /// <summary>
    /// D08: question-and-answer pages on shared neutrals (15/5, 15/15, 1/1, 2/1, 1/0) and a course quiz (30/30, 45/20). Seen, some
    /// derived.
    /// </summary>
    [Theory]
    [InlineData(1, 0, 1)]
    [InlineData(1, 1, 0)]
    [InlineData(2, 1, 1)]
    [InlineData(15, 5, 10)]
    [InlineData(15, 15, 0)]
    [InlineData(30, 30, 0)]
    [InlineData(45, 20, 25)]
    public void On_120_240_V_it_carries_the_difference(int a, int b, int neutral) =>
        Amperes(PanelSystem.SplitPhase, a, b).Neutral(SourceArrangement.Split).ShouldBe(neutral.A);

    /// <summary>D09: a how-to page citing an electricity textbook, ehow.com, "Calculate neutral currents". Seen.</summary>
    [Fact]
    public void On_a_wye_5_8_and_10_A_leave_4_36_A() =>
        ((double)Amperes(PanelSystem.Wye, 5, 8, 10).Neutral(SourceArrangement.OneUnit).Value).ShouldBe(4.36, 0.005);

    [Fact]
    public void On_a_wye_equal_legs_leave_nothing() =>
        ((double)Amperes(PanelSystem.Wye, 7, 7, 7).Neutral(SourceArrangement.OneUnit).Value).ShouldBe(0, 1e-9);

    /// <summary>D11: forums.mikeholt.com, "3 hots one not" and "Prohibited reduction of neutral". Seen; 40/25 derived.</summary>
    [Theory]
    [InlineData(5, 5, 5)]
    [InlineData(10, 10, 10)]
    [InlineData(40, 25, 35)]
    [InlineData(40, 0, 40)]
    public void On_two_legs_of_a_wye_it_carries_about_as_much_as_a_leg(int a, int b, int neutral) =>
        ((double)Amperes(PanelSystem.TwoLegsOfWye, a, b).Neutral(SourceArrangement.OneUnit).Value)
            .ShouldBe(neutral, 1e-9);

    /// <summary>D15: a question-and-answer page on a shared neutral, and one on one 120 V inverter on both legs. Seen.</summary>
    [Theory]
    [InlineData(SourceArrangement.Split, 0)]
    [InlineData(SourceArrangement.OneUnit, 0)]
    [InlineData(SourceArrangement.InPhase, 30)]
    public void Fifteen_amperes_on_each_leg_cancel_or_add_by_the_source(SourceArrangement arrangement, int neutral) =>
        Amperes(PanelSystem.SplitPhase, 15, 15).Neutral(arrangement).ShouldBe(neutral.A);

    /// <summary>Derived: 22 A and 9 A, the reason why shared neutrals and one 120 V unit do not go together.</summary>
    [Theory]
    [InlineData(SourceArrangement.Split, 13)]
    [InlineData(SourceArrangement.InPhase, 31)]
    public void Uneven_legs_cancel_in_part_or_add(SourceArrangement arrangement, int neutral) =>
        Amperes(PanelSystem.SplitPhase, 22, 9).Neutral(arrangement).ShouldBe(neutral.A);

    /// <summary>D12: a controls supplier's knowledge-base article, 20 A at 208 V. Seen.</summary>
    [Fact]
    public void A_208_V_load_of_20_A_puts_20_A_on_two_legs_and_nothing_on_the_third_or_the_neutral()
    {
        var loads = Between(PanelSystem.Wye, Leg.A, 20);
        PanelSystem.Wye.Legs.Select(leg => (double)loads.AmperesOn(leg).Value).ShouldBe([20, 20, 0], 1e-9);
        loads.Neutral(SourceArrangement.OneUnit).Value.ShouldBe(0);
    }

    /// <summary>
    /// Derived: A-B lies 30 degrees ahead of A, so 10 A to neutral and 20 A from A to B make root(100 + 400 + 400 cos 30) A on A;
    /// on B the two lie 30 degrees apart as well.
    /// </summary>
    [Theory]
    [InlineData(Leg.A, 29.0931)]
    [InlineData(Leg.B, 29.0931)]
    [InlineData(Leg.C, 10)]
    public void On_a_wye_a_208_V_load_and_120_V_loads_add_as_phasors(Leg leg, double current) =>
        ((double)(Amperes(PanelSystem.Wye, 10, 10, 10) + Between(PanelSystem.Wye, Leg.A, 20)).AmperesOn(leg).Value)
            .ShouldBe(current, 0.0001);

    /// <summary>Derived: B-C and C-A, too, lie 30 degrees ahead of their first leg.</summary>
    [Theory]
    [InlineData(Leg.B, Leg.C)]
    [InlineData(Leg.C, Leg.A)]
    public void Each_pair_of_a_wye_adds_alike(Leg first, Leg second)
    {
        var loads = Amperes(PanelSystem.Wye, 10, 10, 10) + Between(PanelSystem.Wye, first, 20);
        ((double)loads.AmperesOn(first).Value).ShouldBe(29.0931, 0.0001);
        ((double)loads.AmperesOn(second).Value).ShouldBe(29.0931, 0.0001);
    }

    /// <summary>D14: a controls supplier's knowledge-base article, 14 A on A-B, B-C and C-A. Seen.</summary>
    [Fact]
    public void Three_equal_208_V_loads_of_14_A_make_24_25_A_on_each_leg()
    {
        var wye = PanelSystem.Wye;
        var loads = Between(wye, Leg.A, 14) + Between(wye, Leg.B, 14) + Between(wye, Leg.C, 14);
        wye.Legs.Select(leg => (double)loads.AmperesOn(leg).Value).ShouldBe([24.25, 24.25, 24.25], 0.005);
    }

    /// <summary>D17: a training page on unbalanced load, 220.61(A); rule seen, numbers derived.</summary>
    [Fact]
    public void The_neutral_carries_the_difference_of_the_legs()
    {
        var loads = Amperes(PanelSystem.SplitPhase, 35, 27.5m) + Between(PanelSystem.SplitPhase, Leg.A, 40);
        loads.Neutral(SourceArrangement.OneUnit).ShouldBe(7.5m.A);
    }

    [Fact]
    public void On_one_leg_the_neutral_carries_what_the_leg_carries() =>
        Amperes(PanelSystem.OneLeg, 12).Neutral(SourceArrangement.OneUnit).ShouldBe(12.A);

    private static LegLoads Amperes(PanelSystem system, params decimal[] toNeutral) => LegLoads.None(system) with
    {
        ToNeutral = PerLeg.Of(system, leg => toNeutral[(int)leg].A * system.LineToNeutral),
    };

    private static LegLoads Between(PanelSystem system, Leg first, int current) => LegLoads.None(system) with
    {
        ToNext = PerLeg.Of(system, leg => leg == first ? current.A * system.LineToLine!.Value : VoltAmperes.Zero),
    };
}
