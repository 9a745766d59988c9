namespace PanelTui.Documents.Tests.Demand;

/// <summary>
/// Published examples in the user's own format, tests/Cases/demand. A mark says how well a case's figures stand: `seen` in a
/// source, `derived` from what a source gives, or from `memory`; a comment marks the figures in it that stand otherwise.
/// </summary>
public class DemandCaseTests
{
    private static readonly string[] Marks = ["seen", "derived", "memory"];

    public static TheoryData<string> Cases => [.. DemandCase.Names];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_figures_are_those_of_the_source(string name)
    {
        foreach (var trial in new DemandCase(name).Trials.AtLeastOne())
            trial.Differences.ShouldBeEmpty();
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_case_says_where_it_comes_from_and_expects_something(string name)
    {
        var demand = new DemandCase(name);
        demand.IsPaired.ShouldBeTrue();
        demand.Head("source").ShouldNotBeEmpty();
        demand.Head("edition").ShouldNotBeEmpty();
        demand.Head("mark").ShouldBeOneOf(Marks);
        demand.Trials.AtLeastOne().ShouldAllBe(trial => trial.Figures > 0 && trial.SaysWhy);
    }

    /// <summary>A dwelling may do without its floor area: that is a finding, not a diagnostic.</summary>
    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_schedules_are_in_the_users_own_format(string name) =>
        new DemandCase(name).Trials.SelectMany(trial => trial.Diagnostics).ShouldBeEmpty();

    [Fact]
    public void Every_worked_example_runs_or_is_left_out_for_a_reason() =>
        DemandCase.Names.SelectMany(name => new DemandCase(name).Ids)
            .Concat(WorkedExamples.LeftOut.Select(example => example.Id))
            .ShouldBe(WorkedExamples.Ids, ignoreOrder: true);

    [Fact]
    public void A_reason_is_a_sentence() =>
        WorkedExamples.LeftOut.AtLeastOne().ShouldAllBe(example => example.Reason.EndsWith('.') && example.Reason.Length > 20);
}
