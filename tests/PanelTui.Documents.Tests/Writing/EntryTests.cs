using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Tests.Writing;

public class EntryTests
{
    [Fact]
    public void What_is_added_to_a_file_that_begins_with_a_blank_line_of_Windows_ends_its_lines_alike() =>
        Edited.Add("\r\n# the shed\r\n", "/", "panel", new NewMapping([new("name", "Shed"), new("main", "lugs")]))
            .ShouldBe("\r\n# the shed\r\npanel:\r\n  name: Shed\r\n  main: lugs\r\n");

    [Theory]
    [InlineData("a: 1 # c\nb: 2\n", "a: 1 # c\nb: 2\nnew: x\n")]
    [InlineData("a: 1\n\n# end\n", "a: 1\nnew: x\n\n# end\n")]
    [InlineData("a: |+\n  t\n\n", "a: |+\n  t\n\nnew: x\n")]
    [InlineData("a: |\n  t\n\n# c\n", "a: |\n  t\nnew: x\n\n# c\n")]
    [InlineData("a:\n", "a:\nnew: x\n")]
    [InlineData("a: 1", "a: 1\nnew: x")]
    [InlineData("a: 1\r\nb: 2\r\n", "a: 1\r\nb: 2\r\nnew: x\r\n")]
    [InlineData("a: 1\r\nb: 2\n", "a: 1\r\nb: 2\nnew: x\n")]
    [InlineData("", "new: x\n")]
    [InlineData("# only a comment\n", "# only a comment\nnew: x\n")]
    [InlineData("--- # c\n", "--- # c\nnew: x\n")]
    [InlineData("{}\n", "{new: x}\n")]
    [InlineData("{ }\n", "{new: x}\n")]
    [InlineData("{a: 1}\n", "{a: 1, new: x}\n")]
    [InlineData("{a: 1, }\n", "{a: 1, new: x, }\n")]
    [InlineData("{a: 1, b: 2 } # c\n", "{a: 1, b: 2, new: x } # c\n")]
    [InlineData("{\n  a: 1, # c\n  b: 2 # d\n}\n", "{\n  a: 1, # c\n  b: 2, # d\n  new: x\n}\n")]
    [InlineData("{\n  a: 1,\n  b: 2,\n}\n", "{\n  a: 1,\n  b: 2,\n  new: x,\n}\n")]
    [InlineData("{\n  a: 1,\n  b: 2}\n", "{\n  a: 1,\n  b: 2,\n  new: x}\n")]
    [InlineData("{ # c\n}\n", "{ # c\nnew: x}\n")]
    public void An_entry_is_added_at_the_end_of_its_mapping(string text, string expected) =>
        Edited.Add(text, "/", "new", "x").ShouldBe(expected);

    [Theory]
    [InlineData("a: 1 # c\n# d\nb: 2\n", "a: 1 # c\nnew: x\n# d\nb: 2\n")]
    [InlineData("a:\n  k: 1\nb: 2\n", "a:\n  k: 1\nnew: x\nb: 2\n")]
    [InlineData("{a: 1, b: 2}\n", "{a: 1, new: x, b: 2}\n")]
    [InlineData("{\n  a: 1, # c\n  b: 2\n}\n", "{\n  a: 1, # c\n  new: x,\n  b: 2\n}\n")]
    [InlineData("? a\n: 1\nb: 2\n", "? a\n: 1\nnew: x\nb: 2\n")]
    public void An_entry_is_added_after_another(string text, string expected) =>
        Edited.Add(text, "/", "new", "x", after: "a").ShouldBe(expected);

    [Theory]
    [InlineData("- a: 1\n  b: 2\n", "- new: x\n  a: 1\n  b: 2\n")]
    [InlineData("-   a: 1\n", "-   new: x\n    a: 1\n")]
    [InlineData("-\n  # c\n  a: 1\n", "-\n  # c\n  new: x\n  a: 1\n")]
    [InlineData("- {a: 1}\n", "- {new: x, a: 1}\n")]
    public void An_entry_can_come_first_even_after_a_dash(string text, string expected) =>
        Edited.By(text, tree => YamlEditor.InsertEntryAt(tree, Trees.Path("/0"), 0, "new", "x")).ShouldBe(expected);

    [Theory]
    [InlineData("p:\n", "p:\n  new: x\n")]
    [InlineData("p: # c\nq: 1\n", "p: # c\n  new: x\nq: 1\n")]
    [InlineData("o:\n    k: 1\np:\n", "o:\n    k: 1\np:\n    new: x\n")]
    [InlineData("p: {}\n", "p: {new: x}\n")]
    [InlineData("p: &a\nq: *a\n", "p: &a\n  new: x\nq: *a\n")]
    [InlineData("{p: }\n", "{p: {new: x} }\n")]
    public void An_empty_value_becomes_a_mapping(string text, string expected) => Edited.Add(text, "/p", "new", "x").ShouldBe(expected);

    [Fact]
    public void A_key_is_quoted_when_it_must_be() =>
        Edited.Add("a: 1\n", "/", "on", "x").ShouldBe("a: 1\n\"on\": x\n");

    [Fact]
    public void A_whole_circuit_is_written_in_the_file_s_layout()
    {
        var circuit = new NewMapping(
        [
            new("space", new NewScalar("2", ScalarKind.Plain)),
            new("name", "Well pump"),
            new("places", new NewSequence(["outdoors", "damp"])),
            new("loads", new NewSequence([new NewMapping([new("kind", "motor")], CollectionStyle.Flow)], CollectionStyle.Block)),
        ]);
        Edited.Insert("circuits:\n  - space: 1\n    name: Spare\n", "/circuits", 1, circuit).ShouldBe(
            """
            circuits:
              - space: 1
                name: Spare
              - space: 2
                name: Well pump
                places: [outdoors, damp]
                loads:
                  - {kind: motor}

            """);
        Edited.Insert("circuits:\n- {space: 1, name: Spare}\n", "/circuits", 1, circuit).ShouldBe(
            "circuits:\n- {space: 1, name: Spare}\n- {space: 2, name: Well pump, places: [outdoors, damp], loads: [{kind: motor}]}\n");
    }

    [Theory]
    [InlineData("# c\na: 1 # d\nb: 2\n", "/a", "# c\nb: 2\n")]
    [InlineData("a: 1\nb:\n  c: 1\n  # in b\n  d: 2\n# c\n", "/b", "a: 1\n# c\n")]
    [InlineData("a: 1\nb: |\n  t\n\nc: 1\n", "/b", "a: 1\n\nc: 1\n")]
    [InlineData("a: 1\nb: 2", "/b", "a: 1")]
    [InlineData("a: 1\r\nb: 2\r\n", "/a", "b: 2\r\n")]
    [InlineData("a: 1\n? b\n: 2\nc: 3\n", "/b", "a: 1\nc: 3\n")]
    [InlineData("- a: 1 # c\n  b: 2\n", "/0/a", "- b: 2\n")]
    [InlineData("- a: 1 # c\n  # d\n  b: 2\n", "/0/a", "- # c\n  # d\n  b: 2\n")]
    [InlineData("- a: 1\n  # d\n  b: 2\n", "/0/a", "-\n  # d\n  b: 2\n")]
    [InlineData("- a: 1 # c\n", "/0/a", "- {} # c\n")]
    [InlineData("a: 1\n", "/a", "{}\n")]
    [InlineData("p: # c\n  a: 1 # d\nq: 1\n", "/p/a", "p: {} # c\nq: 1\n")]
    [InlineData("p:\n  a:\n    - x\n  # d\nq: 1\n", "/p/a", "p: {}\n  # d\nq: 1\n")]
    [InlineData("{a: 1, b: 2}\n", "/a", "{b: 2}\n")]
    [InlineData("{a: 1, b: 2}\n", "/b", "{a: 1}\n")]
    [InlineData("{a: 1, b: 2, c: 3}\n", "/b", "{a: 1, c: 3}\n")]
    [InlineData("{a: 1, b: 2, }\n", "/b", "{a: 1, }\n")]
    [InlineData("{a: 1}\n", "/a", "{}\n")]
    [InlineData("{\n  a: 1, # c\n  b: 2 # d\n}\n", "/a", "{\n  b: 2 # d\n}\n")]
    [InlineData("{\n  a: 1, # c\n  b: 2 # d\n}\n", "/b", "{\n  a: 1 # c\n}\n")]
    [InlineData("{\n  a: 1, # c\n  b: 2}\n", "/b", "{\n  a: 1 # c\n  }\n")]
    public void An_entry_goes_with_its_lines_and_comments_above_it_stay(string text, string path, string expected) =>
        Edited.Remove(text, path).ShouldBe(expected);

    [Theory]
    [InlineData("a: &x 1\nb: *x\n", "/a", "the file could no longer be read, so nothing was changed: *x repeats a value marked &x, but there is none above it")]
    [InlineData("{ # c\n  a: 1 }\n", "/a", "a comment inside the brackets would be lost; move it first")]
    [InlineData("{a: [1, # c\n 2], b: 1}\n", "/a", "a comment inside the brackets would be lost; move it first")]
    [InlineData("a: [b: 1]\n", "/a/0/b", "a single 'key: value' in a list's brackets has no braces; put it in { } first")]
    [InlineData("a: 1\n", "/b", "there is no /b in the file")]
    [InlineData("- a\n", "/0", "/0 is not an entry of a mapping")]
    public void What_cannot_be_removed_is_refused_with_a_reason(string text, string path, string expected) =>
        Edited.Refusal(() => Edited.Remove(text, path)).ShouldBe(expected);

    [Fact]
    public void A_key_that_is_there_is_not_added_again() =>
        Edited.Refusal(() => Edited.Add("a: 1\n", "/", "a", "x")).ShouldBe("/ has a already");
}
