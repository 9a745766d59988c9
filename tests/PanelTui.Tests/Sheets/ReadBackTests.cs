using PanelTui.Sheets;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Fonts.Standard14Fonts;
using UglyToad.PdfPig.Writer;

namespace PanelTui.Tests.Sheets;

/// <summary>Every sheet of every example as a PDF, read back by a library that had no part in writing it.</summary>
public class ReadBackTests
{
    /// <summary>Common practice, no source: print below 6 pt is not read at arm's length.</summary>
    private const double SmallestPrint = 6;

    /// <summary>A diagram of 84 spaces is shrunk until it fits on its page: 5.01 pt on letter paper.</summary>
    private const double SmallestOnADiagram = 5;

    public static MatrixTheoryData<string, string> All =>
        new(SheetCases.ExampleNames, SheetKind.All.Select(kind => kind.Name));

    public static MatrixTheoryData<string, string> OfCircuits => new(SheetCases.ExampleNames, SheetCases.NamesCircuits);

    [Theory, MemberData(nameof(All))]
    public void A_strict_reader_has_nothing_to_complain_of_and_finds_every_letter_in_the_file(
        string example, string kind)
    {
        var read = ReadBack.Of(example, kind);
        read.Complaints.ShouldBeEmpty();
        read.Created.ShouldBe("D:20000101000000+00'00'", "the same file gives the same bytes, whenever it is printed");
        read.Fonts.AtLeastOne()
            .ShouldAllBe(font => font.Length > 7 && font[6] == '+', "a font that is embedded is named ABCDEF+Name");
    }

    [Theory, MemberData(nameof(All))]
    public void Each_page_defers_to_the_authority_and_the_first_names_the_panel(string example, string kind)
    {
        var read = ReadBack.Of(example, kind);
        ReadBack.Joined(read.Pages[0]).ShouldContain(SheetCases.Example(example).Schedule.Panel.Name.ShouldNotBeNull());
        foreach (var page in read.Pages.AtLeastOne())
            ReadBack.Joined(page).ShouldContain("authority having jurisdiction");
    }

    [Theory, MemberData(nameof(OfCircuits))]
    public void Every_circuit_is_named_whole(string example, string kind)
    {
        var text = ReadBack.Of(example, kind).Text;
        foreach (var name in SheetCases.CircuitsOn(kind, example).AtLeastOne()) text.ShouldContain(name);
    }

    [Theory, MemberData(nameof(All))]
    public void No_print_is_too_small_to_read(string example, string kind) =>
        ReadBack.Of(example, kind).Smallest
            .ShouldBeGreaterThanOrEqualTo(kind == "diagram" ? SmallestOnADiagram : SmallestPrint);

    [Theory, MemberData(nameof(All))]
    public void Nothing_lies_outside_its_page(string example, string kind) =>
        ReadBack.Of(example, kind).Outside.ShouldBeEmpty();

    /// <summary>The reader itself is tried on a page that is wrong in each of these ways.</summary>
    [Fact]
    public void A_letter_that_is_small_or_off_the_page_or_in_a_font_of_the_reader_is_noticed()
    {
        using var made = new PdfDocumentBuilder();
        var font = made.AddStandard14Font(Standard14Font.Helvetica);
        var page = made.AddPage(PageSize.Letter);
        page.AddText("small print", 4, new PdfPoint(72, 700), font);
        page.AddText("cut at the edge", 12, new PdfPoint(560, 500), font);
        var read = ReadBack.Of(made.Build());
        read.Text.ShouldBe("small print cut at the edge");
        read.Smallest.ShouldBe(4);
        read.Outside.ShouldNotBeEmpty();
        read.Fonts.ShouldContain("Helvetica");
    }
}
