using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Tests.Codes;

public class CitationTests
{
    [Fact]
    public void A_citation_reads_as_document_edition_and_section() =>
        Nec.Section("Table 240.6(A)").In(CodeEdition.Nec2023).ToString().ShouldBe("NEC 2023 Table 240.6(A)");

    [Fact]
    public void A_habit_of_the_trade_says_that_it_has_no_source() =>
        Citation.CommonPractice.ToString().ShouldBe("common practice, no source");

    [Fact]
    public void What_is_remembered_says_so() =>
        Nec.FromMemory("408.30").In(CodeEdition.Nec2020).ToString().ShouldBe("NEC 2020 408.30, from memory");

    [Fact]
    public void What_the_schedule_states_cites_the_schedule() =>
        Citation.Schedule.ToString().ShouldBe("the schedule");

    [Fact]
    public void A_standard_without_an_edition_is_cited_without_one() =>
        new Citation("NEMA", null, "MG 1", Standing.Seen).ToString().ShouldBe("NEMA MG 1");

    [Theory]
    [InlineData(CodeEdition.Nec2017, "220.44")]
    [InlineData(CodeEdition.Nec2020, "220.44")]
    [InlineData(CodeEdition.Nec2023, "220.47")]
    public void A_section_that_moved_is_cited_under_the_number_of_the_edition(CodeEdition edition, string number) =>
        Nec.Section((2017, "220.44"), (2023, "220.47")).In(edition).Section.ShouldBe(number);
}
