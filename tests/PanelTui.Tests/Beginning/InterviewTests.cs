using PanelTui.Beginning;
using PanelTui.Engine.Panels;

namespace PanelTui.Tests.Beginning;

/// <summary>The few questions of a new schedule, without a terminal.</summary>
public class InterviewTests
{
    [Fact]
    public void Enter_alone_answers_every_question_and_makes_a_schedule_without_an_error()
    {
        var (answers, asked) = Answering(_ => "");
        asked.ShouldBeLessThanOrEqualTo(18);
        Read(answers).Panel.Spaces.ShouldBe(12);
    }

    [Fact]
    public void What_is_to_be_fed_gets_a_breaker_a_space_and_a_load_that_says_where_its_figures_are_from()
    {
        var (answers, _) = Answering(question => question.Path == "circuits" ? "1 3 9" : "");
        var schedule = Read(answers);
        schedule.Circuits.Select(circuit => circuit.Name).ShouldBe(["Hall and stair lights", "Kitchen refrigerator", "Well pump"], ignoreOrder: true);
        schedule.Circuits.AtLeastOne().ShouldAllBe(circuit => circuit.Loads.Length == 1);
        BeginningText.Of(answers).ShouldContain("common practice, no source");
    }

    [Fact]
    public void Usual_loads_are_spread_over_the_legs()
    {
        var (answers, _) = Answering(question => question.Path == "circuits" ? "2 3 5 6" : "");
        var legs = Read(answers).Circuits.Select(circuit => circuit.Legs(PanelSystem.SplitPhase).Single()).ToList();
        legs.Count(leg => leg == Leg.A).ShouldBe(2);
        legs.Count(leg => leg == Leg.B).ShouldBe(2);
    }

    [Fact]
    public void What_finds_no_place_is_told_and_stands_in_the_file_as_a_comment()
    {
        var (answers, _) = Answering(question => question.Path switch { "panel.system" => "120 V 1ph 2W", "circuits" => "9 1", _ => "" });
        BeginningText.LeftOut(answers).ShouldBe(["Well pump"]);
        Read(answers).Circuits.ShouldHaveSingleItem().Name.ShouldBe("Hall and stair lights");
        BeginningText.Of(answers).ShouldContain("# no place was found for: Well pump, 20 A two-pole");
    }

    [Theory]
    [InlineData("panel.spaces", "many", "the number of spaces is \"many\"; write a whole number, 1 to 252")]
    [InlineData("panel.bus", "125 V", "the bus rating is \"125 V\", a voltage; a current in A or kA is expected, e.g. 60 A")]
    [InlineData("source.continuous", "7.5", "\"7.5\" could be 7.5 kW or 7.5 W")]
    [InlineData("source.ocpd", "7,5 kW", "the source's breaker is \"7,5 kW\", a power; a current in A or kA is expected, e.g. 20 A")]
    [InlineData("source.outlet", "30", "\"30\" could be TT-30 or L5-30 or 5-30 or L6-30 or L14-30 or 14-30 or 10-30 or L21-30")]
    [InlineData("transfer.kind", "30", "\"30\" is not on the list; write a number of it, or a word")]
    [InlineData("circuits", "1 99", "\"99\" is not on the list; write numbers of it with blanks between, e.g. 1 3 4")]
    public void An_answer_that_cannot_stand_leaves_the_question_and_says_why(string path, string typed, string refusal)
    {
        var interview = UpTo(path).Answer(typed);
        interview.Current!.Path.ShouldBe(path);
        interview.Refusal.ShouldBe(refusal);
    }

    [Fact]
    public void A_number_without_its_unit_is_offered_with_it_and_enter_takes_it() =>
        UpTo("source.continuous").Answer("7.5").Answer("").Answers["source.continuous"].ShouldBe("7.5 kW");

    [Fact]
    public void The_voltage_system_is_asked_for_as_such_and_the_outlets_are_listed()
    {
        UpTo("panel.system").Current!.Text.ShouldBe("Which voltage system does it have?");
        UpTo("source.outlet").Current!.Hint.ShouldContain("TT-30, L5-20, L5-30");
    }

    [Fact]
    public void Both_neutrals_are_asked_for_and_may_be_left_until_somebody_has_looked()
    {
        var (answers, _) = Answering(question => question.Path switch { "source.neutral" => "floating", "transfer.switches_neutral" => "no", _ => "" });
        BeginningText.Of(answers).ShouldContain("  neutral: floating");
        BeginningText.Of(answers).ShouldContain("  switches_neutral: no");
        Read(Answering(_ => "").Answers).Source!.Neutral.ShouldBeNull();
        BeginningText.Of(Answering(_ => "").Answers).ShouldContain("  # switches_neutral: ");
    }

    [Fact]
    public void Going_back_takes_the_last_answer_away()
    {
        var interview = Interview.Start.Answer("Barn").Answer("East wall").Back();
        interview.Current!.Path.ShouldBe("panel.location");
        interview.Back().Back().Back().Current!.Path.ShouldBe("panel.name");
    }

    [Fact]
    public void A_question_that_makes_no_sense_is_not_asked()
    {
        Asked(question => question.Path == "source.kind" ? "not yet" : "").ShouldNotContain("source.ocpd");
        Asked(question => question.Path == "source.kind" ? "inverters" : "").ShouldContain("source.arrangement");
        Asked(question => question.Path switch { "source.kind" => "inverters", "panel.system" => "2", _ => "" }).ShouldNotContain("source.arrangement");
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Whatever_is_answered_the_file_can_be_read(int seed)
    {
        string[] others = ["", "", "1 2 3 4 5 6 7 8 9 10 11 12 13 14 15", "Barn: #1 \"east\"", "30 A", "7", "9 kW", "lugs", "L14-30"];
        for (var round = 0; round < 60; round++)
        {
            var state = (uint)((seed * 7919) + round);
            var (answers, _) = Answering(question =>
                !question.Choices.IsEmpty && Roll(3) > 0 ? $"{Roll(question.Choices.Length) + 1}" : others[Roll(others.Length)]);
            Read(answers);

            int Roll(int sides) => (int)((state = unchecked((state * 1664525) + 1013904223)) >> 8) % sides;
        }
    }

    private static Schedule Read(Answers answers)
    {
        var snapshot = Shed.Snapshot(BeginningText.Of(answers));
        snapshot.Diagnostics.Where(found => found.IsError).Select(found => found.Message).ShouldBeEmpty();
        return snapshot.Schedule!;
    }

    private static (Answers Answers, int Asked) Answering(Func<Question, string> answer)
    {
        var (interview, asked) = (Interview.Start, 0);
        for (; interview.Current is { } question; asked++)
        {
            var next = interview.Answer(answer(question));
            interview = next.Refusal is null ? next : interview.Answer("");
        }

        return (interview.Answers, asked);
    }

    private static IEnumerable<string> Asked(Func<Question, string> answer) =>
        Answering(answer).Answers.Given.Select(given => given.Question.Path);

    private static Interview UpTo(string path)
    {
        var interview = Interview.Start;
        while (interview.Current!.Path != path) interview = interview.Answer("");
        return interview;
    }
}
