using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>The reference page of the format and the table of its keys agree.</summary>
public class FormatPageTests
{
    private static readonly string Page = Path.Combine(House.Root, "docs", "format.md");

    [Fact]
    public void The_page_names_every_key()
    {
        var page = File.ReadAllText(Page);
        FieldBook.All
            .Where(field => !page.Contains($"`{field.Key}`", StringComparison.Ordinal))
            .Where(field => !page.Contains($".{field.Key}`", StringComparison.Ordinal))
            .Select(field => field.Path)
            .ShouldBeEmpty();
    }

    [Fact]
    public void The_page_names_every_word_there_is_to_choose()
    {
        var page = File.ReadAllText(Page);
        FieldBook.All
            .Where(field => field.WhyNot("any other word") is not null)
            .SelectMany(field => field.Allowed)
            .Distinct()
            .Where(word => !page.Contains(word, StringComparison.Ordinal)).ShouldBeEmpty();
    }
}
