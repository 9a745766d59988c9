using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Balance;

/// <summary>What holds for every plan on panels by chance, also on larger ones than an oracle can follow.</summary>
public class BalanceProperties
{
    private static readonly BalanceBy[] Bys = [BalanceBy.Connected, BalanceBy.Worst, BalanceBy.Scenario("Day"), BalanceBy.Demand];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, 48)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_plan_loses_no_load_breaks_no_rule_and_is_never_worse(int number)
    {
        var system = PanelSystem.All[number % PanelSystem.All.Length];
        var schedule = PanelByChance.Of(500 + number, system, 12 + (number % 30), 8 + (number % 14));
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(300));
        var frontier = BalanceSearch.Of(schedule, Bys[number % Bys.Length], null, stop.Token);
        var before = schedule.Assessed();
        foreach (var plan in frontier.Plans.AtLeastOne())
        {
            var after = Rehung.With(schedule, plan.Hops);
            plan.Imbalance.ShouldBeLessThanOrEqualTo(frontier.Now);
            plan.Bound.ShouldBeLessThanOrEqualTo(plan.Imbalance);
            BalanceGauge.Of(after, frontier.By).ShouldBe(plan.Imbalance);
            after.Assessed().Connected.Total.ShouldBe(before.Connected.Total);
            (Lawful.HasNoClash(after) && Lawful.IsKept(after)).ShouldBeTrue();
            plan.Hops.ShouldNotContain(hop => hop.To == schedule.Circuits[hop.Ordinal].Space || schedule.Circuits[hop.Ordinal].Fixed);
            BalanceCheck.WhyNot(schedule, plan.Hops).ShouldBeNull();
            Errors(after.Assessed()).ShouldBeSubsetOf(Errors(before));
        }
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Steps_come_in_an_order_in_which_every_space_is_free(int number)
    {
        var schedule = PanelByChance.Of(900 + number, PanelSystem.Wye, 18, 14);
        using var stop = new CancellationTokenSource(TimeSpan.FromMilliseconds(200));
        var plans = BalanceSearch.Of(schedule, BalanceBy.Connected, null, stop.Token).Plans;
        foreach (var plan in plans.Where(plan => plan.Moves > 0).AtLeastOne())
        {
            var now = schedule;
            foreach (var step in BalanceStep.Of(schedule, plan.Hops).AtLeastOne())
            {
                now = Rehung.With(now, step.Moves.Select(move => new Hop(move.Circuit.Ordinal, move.To)));
                Lawful.HasNoClash(now).ShouldBeTrue();
            }
            now.Circuits.ShouldBe(Rehung.With(schedule, plan.Hops).Circuits);
        }
    }

    private static IEnumerable<string> Errors(Assessment assessment) =>
        assessment.Findings.Where(finding => finding.Rule is "space-taken-twice" or "breaker-past-last-space" or "tandem-not-listed-here"
            or "shared-neutral-on-one-leg" or "shared-neutral-without-tie" or "tie-without-partner").Select(finding => finding.Rule).Distinct();
}
