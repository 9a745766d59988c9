using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Tests.Writing;

public class SetScalarTests
{
    [Fact]
    public void A_text_whose_indentation_is_given_by_a_digit_goes_with_all_its_lines() =>
        Edited.Set("x: |2\n    indented\n   \ny: 1\n", "/x", "one line").ShouldBe("x: one line\ny: 1\n");

    [Theory]
    [InlineData("a: 20 A  # c\n", "a: x  # c\n")]
    [InlineData("a:\t20 A\t# c\n", "a:\tx\t# c\n")]
    [InlineData("a: '20 A'\n", "a: 'x'\n")]
    [InlineData("a: \"20 A\"\n", "a: \"x\"\n")]
    [InlineData("a:\n", "a: x\n")]
    [InlineData("a:   # c\n", "a: x   # c\n")]
    [InlineData("a: &b # c\nc: *b\n", "a: &b x # c\nc: *b\n")]
    [InlineData("a : 5\n", "a : x\n")]
    [InlineData("'a': 5\n", "'a': x\n")]
    [InlineData("? a\n: 5\n", "? a\n: x\n")]
    [InlineData("a: one\n  two # c\n", "a: x # c\n")]
    [InlineData("a: 'one\n\n  two'\nb: 1\n", "a: 'x'\nb: 1\n")]
    [InlineData("a: \"one \\\n  two\"\n", "a: \"x\"\n")]
    [InlineData("a: |\n  one\n  two\nb: 1\n", "a: x\nb: 1\n")]
    [InlineData("a: >-  # c\n  one\n\nb: 1\n", "a: x  # c\n\nb: 1\n")]
    [InlineData("a: |+\n  one\n\nb: 1\n", "a: x\n\nb: 1\n")]
    [InlineData("a: |2\n    one\n  two\nb: 1\n", "a: x\nb: 1\n")]
    [InlineData("a: |\n  one", "a: x")]
    [InlineData("a: {b: 1}\r\n", "a: {b: 1}\r\n", "/a/b", "1")]
    [InlineData("{a: 1, b: 2}\n", "{a: x, b: 2}\n")]
    [InlineData("{a, b: 2}\n", "{a: x, b: 2}\n")]
    [InlineData("{\"a\":1}\n", "{\"a\":x}\n")]
    [InlineData("{a: , b: 2}\n", "{a: x , b: 2}\n")]
    [InlineData("a: &b 5\nc: *b\n", "a: &b x\nc: *b\n")]
    [InlineData("a: !!str 5\n", "a: !!str x\n")]
    [InlineData("😀: 1\na: 😀\n", "😀: 1\na: x\n")]
    [InlineData("\n# c\n--- # d\na: 5\n...\n# e\n", "\n# c\n--- # d\na: x\n...\n# e\n")]
    [InlineData("a: 1\r\nb: 2\n", "a: x\r\nb: 2\n")]
    [InlineData("b: 2\na: 1", "b: 2\na: x")]
    [InlineData("a: 5   \n   \n\n", "a: x   \n   \n\n")]
    public void A_value_is_replaced_and_nothing_else(string text, string expected, string path = "/a", string value = "x") =>
        Edited.Set(text, path, value, value == "x" ? ScalarKind.Text : ScalarKind.Plain).ShouldBe(expected);

    [Theory]
    [InlineData("Well pump", "Well pump")]
    [InlineData("", "\"\"")]
    [InlineData("N", "\"N\"")]
    [InlineData("on", "\"on\"")]
    [InlineData("010", "\"010\"")]
    [InlineData("12:30", "\"12:30\"")]
    [InlineData("1e3", "\"1e3\"")]
    [InlineData("~", "\"~\"")]
    [InlineData("20", "\"20\"")]
    [InlineData("2026-11-25", "\"2026-11-25\"")]
    [InlineData("a # b", "\"a # b\"")]
    [InlineData("a#b", "a#b")]
    [InlineData("a: b", "\"a: b\"")]
    [InlineData("a:b", "a:b")]
    [InlineData("a:", "\"a:\"")]
    [InlineData("- a", "\"- a\"")]
    [InlineData("-a", "-a")]
    [InlineData("? a", "\"? a\"")]
    [InlineData("@a", "\"@a\"")]
    [InlineData("%a", "\"%a\"")]
    [InlineData("[a", "\"[a\"")]
    [InlineData("a, b", "a, b")]
    [InlineData("3/4\"", "3/4\"")]
    [InlineData("\"a\"", "'\"a\"'")]
    [InlineData("it's", "it's")]
    [InlineData("75 °C", "75 °C")]
    [InlineData("配電盤", "配電盤")]
    [InlineData(" a", "\" a\"")]
    [InlineData("a ", "\"a \"")]
    [InlineData("a\tb", "\"a\\tb\"")]
    [InlineData("\u001b[2J", "\"\\e[2J\"")]
    [InlineData("a\u2028b\u0085", "\"a\\u2028b\\x85\"")]
    [InlineData("---", "\"---\"")]
    [InlineData("C:\\x", "C:\\x")]
    public void A_text_is_quoted_when_some_reader_would_misread_it(string value, string written) =>
        Edited.Set("a: old\nb: 1\n", "/a", value).ShouldBe($"a: {written}\nb: 1\n");

    [Theory]
    [InlineData("20 A", "20 A")]
    [InlineData("5", "5")]
    [InlineData("yes", "yes")]
    [InlineData("a: b", "\"a: b\"")]
    public void A_quantity_is_written_bare(string value, string written) =>
        Edited.Set("a: old\n", "/a", value, ScalarKind.Plain).ShouldBe($"a: {written}\n");

    [Theory]
    [InlineData("a: '20 A'\n", "25 A", "a: '25 A'\n")]
    [InlineData("a: \"20\"\n", "30", "a: 30\n")]
    [InlineData("a: [20 A, \"15 A\"]\n", "30 A", "a: [20 A, \"30 A\"]\n", "/a/1")]
    public void A_quantity_keeps_the_quotes_it_has_unless_they_would_change_what_it_is(
        string text, string value, string expected, string path = "/a") =>
        Edited.Set(text, path, value, ScalarKind.Plain).ShouldBe(expected);

    [Theory]
    [InlineData("a: old # c\nb: 1\n", "a: | # c\n  one\n\n  two\nb: 1\n")]
    [InlineData("a: |-  # c\n    old\nb: 1\n", "a: |  # c\n    one\n\n    two\nb: 1\n")]
    [InlineData("a: # c\nb: 1\n", "a: | # c\n  one\n\n  two\nb: 1\n")]
    [InlineData("a: old\r\nb: 1\r\n", "a: |\r\n  one\r\n\r\n  two\r\nb: 1\r\n")]
    [InlineData("a: 'old'\n", "a: |\n  one\n\n  two\n")]
    [InlineData("{a: old}\n", "{a: \"one\\n\\ntwo\\n\"}\n")]
    public void A_text_of_several_lines_goes_below_its_key(string text, string expected) =>
        Edited.Set(text, "/a", "one\n\ntwo\n").ShouldBe(expected);

    [Theory]
    [InlineData(" lead\nx")]
    [InlineData("x\n\n")]
    [InlineData("x \ny")]
    [InlineData("x\r\ny")]
    [InlineData("\n")]
    public void Several_lines_that_would_not_survive_that_are_quoted(string value) =>
        Edited.Set("a: old\n", "/a", value).ShouldStartWith("a: \"");

    [Fact]
    public void A_value_that_already_says_this_is_left_as_it_is()
    {
        Edited.Set("a: \"20 A\" # c\n", "/a", "20 A").ShouldBe("a: \"20 A\" # c\n");
        YamlEditor.SetScalar(Trees.Of("a: 5\n"), Trees.Path("/a"), new("5", ScalarKind.Plain)).IsEmpty.ShouldBeTrue();
    }

    [Fact]
    public void A_missing_key_is_added() =>
        Edited.Set("a: 1 # c\n# end\n", "/b", "x").ShouldBe("a: 1 # c\nb: x\n# end\n");

    [Theory]
    [InlineData("a: &x 1\nb: *x\n", "/b", "/b repeats a value from elsewhere (*x); change it where it is marked &x")]
    [InlineData("b: [1]\n", "/b", "/b holds a list, not a single value")]
    [InlineData("b: {c: 1}\n", "/b", "/b holds a mapping, not a single value")]
    [InlineData("b: 1\n", "/c/0", "there is no /c/0 in the file")]
    [InlineData("b: 1\n", "/b/c", "/b is not a mapping, so it can hold no c")]
    [InlineData("? b\n", "/b", "the key after '?' has no ':' yet; write the value by hand")]
    public void What_cannot_be_set_is_refused_with_a_reason(string text, string path, string expected) =>
        Edited.Refusal(() => Edited.Set(text, path, "x")).ShouldBe(expected);

    [Fact]
    public void A_tag_that_says_text_keeps_numbers_out() =>
        Edited.Refusal(() => Edited.Set("a: !!str x\n", "/a", "5", ScalarKind.Plain)).ShouldBe("/a is marked as a text by the tag !!str");

    [Theory]
    [InlineData("!!binary")]
    [InlineData("!!int")]
    [InlineData("!<tag:yaml.org,2002:timestamp>")]
    public void A_tag_that_says_anything_else_keeps_new_texts_out(string tag) =>
        Edited.Refusal(() => Edited.Set($"a: {tag} eA==\n", "/a", "XYZZY")).ShouldBe(
            $"/a has the tag {tag}, under which a new text would mean something else; take the tag away in a text editor first");

    [Fact]
    public void Half_a_surrogate_pair_cannot_be_written() =>
        Edited.Refusal(() => Edited.Set("a: x\n", "/a", "\uD83D")).ShouldContain("half of a surrogate pair");
}
