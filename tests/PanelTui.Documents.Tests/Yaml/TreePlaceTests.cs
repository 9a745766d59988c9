using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Yaml;

/// <summary>Every value knows its own characters: no trailing blanks, no comments, no blank lines below.</summary>
public class TreePlaceTests
{
    [Theory]
    [InlineData("a: 20 A  # c\n", "20 A")]
    [InlineData("a:\t20 A\t# c\n", "20 A")]
    [InlineData("a: 'it''s' # c\n", "'it''s'")]
    [InlineData("a: \"x\\ty\"\n", "\"x\\ty\"")]
    [InlineData("a: &x !!str 5 # c\n", "5")]
    [InlineData("a: one\n   two\n\nb: 1\n", "one\n   two")]
    [InlineData("a: 'one\n\n  two' # c\n", "'one\n\n  two'")]
    [InlineData("a: \"one \\\n  two\"\n", "\"one \\\n  two\"")]
    [InlineData("a: |\n  one\n  two\n\n\nb: 1\n", "|\n  one\n  two")]
    [InlineData("a: |- # c\n  one\n\nb: 1\n", "|- # c\n  one")]
    [InlineData("a: |+\n  one\n\nb: 1\n", "|+\n  one")]
    [InlineData("a: |2\n    deep\n  one\n   \nb: 1\n", "|2\n    deep\n  one\n   ")]
    [InlineData("a: |\n  one\n   \n  \nb: 1\n", "|\n  one\n   ")]
    [InlineData("a: |\n  # not a comment\n", "|\n  # not a comment")]
    [InlineData("a: >\n  one", ">\n  one")]
    [InlineData("a: | # c\n\nb: 1\n", "|")]
    [InlineData("a: [1, 2 ] # c\n", "[1, 2 ]")]
    [InlineData("a: { b: 1,\n  c: 2, # c\n  }\n", "{ b: 1,\n  c: 2, # c\n  }")]
    [InlineData("a:\n  b: 1 # c\n\n# d\nc: 2\n", "b: 1")]
    [InlineData("a:\n- x\n# c\n- y # d\n", "- x\n# c\n- y")]
    [InlineData("? a\n: 5\n", "5")]
    [InlineData("'a' : 5\n", "5")]
    [InlineData("a: # c\n", "")]
    [InlineData("a: &x # c\n", "")]
    [InlineData("a: \"\"", "\"\"")]
    [InlineData("😀: 1\na: 😀 x # c\n", "😀 x")]
    [InlineData("%YAML 1.2\n--- # c\na: 1\n...\n", "1")]
    [InlineData("a: 3/4\"\r\nb: 1\r\n", "3/4\"")]
    [InlineData("a: 1\rb: 1\r", "1")]
    public void A_value_s_place_is_its_own_characters(string text, string expected) => Trees.Of(text).Written("/a").ShouldBe(expected);

    [Fact]
    public void An_empty_value_stands_right_after_its_colon_or_dash()
    {
        var tree = Trees.Of("a:   # c\nb:\n- \n-   # d\n");
        tree.Node("/a").Span.ShouldBe(new(2, 0));
        tree.Node("/b/0").Span.ShouldBe(new(13, 0));
        tree.Node("/b/1").Span.ShouldBe(new(16, 0));
        tree.Node("/a").IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void Colons_dashes_anchors_and_tags_are_found()
    {
        var tree = Trees.Of("a : &x !!str b\nc:\n  -   d\n");
        tree.Root!.Pairs[0].ColonOffset.ShouldBe(2);
        tree.Node("/a").Anchor.ShouldBe("x");
        tree.Node("/a").Tag.ShouldBe("tag:yaml.org,2002:str");
        tree.Node("/a").IsPlain.ShouldBeFalse();
        tree.Node("/c").Items[0].DashOffset.ShouldBe(20);
    }

    [Fact]
    public void A_pair_in_a_list_s_brackets_is_a_mapping_without_braces()
    {
        var tree = Trees.Of("a: [b: 1, {c: 2}: 3, ? d : 4]\n");
        tree.Written("/a/0").ShouldBe("b: 1");
        tree.Written("/a/1").ShouldBe("{c: 2}: 3");
        tree.Written("/a/2").ShouldBe("? d : 4");
    }

    [Fact]
    public void Comments_are_listed_wherever_they_stand()
    {
        var tree = Trees.Of("# one\na: [ # two\n  1 ] # three\nb: |\n  # not one\nc: '#no' # four\n");
        tree.Comments.Select(tree.Source.Slice).ShouldBe(["# one", "# two", "# three", "# four"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n\n")]
    [InlineData("# only a comment")]
    public void A_file_that_holds_nothing_has_no_root(string text) => Trees.Of(text).Root.ShouldBeNull();

    [Fact]
    public void Duplicate_keys_are_kept_and_both_places_are_told()
    {
        var tree = Trees.Of("a: 1\nb: {c: 1, c: 2}\n'a': 3\n");
        DuplicateKeys.Of(tree).ShouldBe([new("a", new(0, 1), new(21, 3)), new("c", new(9, 1), new(15, 1))]);
        tree.Node("/a").Value.ShouldBe("1");
    }
}
