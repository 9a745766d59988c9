using PanelTui.Documents.Writing;

namespace PanelTui.Documents.Tests.Writing;

public class ItemTests
{
    private static readonly NewMapping Circuit = new([new("space", new NewScalar("1", ScalarKind.Plain))]);

    [Theory]
    [InlineData("- a\n- b\n", 2, "- a\n- b\n- x\n")]
    [InlineData("- a\n- b\n", 1, "- a\n- x\n- b\n")]
    [InlineData("- a\n- b\n", 0, "- x\n- a\n- b\n")]
    [InlineData("-   a\n", 1, "-   a\n-   x\n")]
    [InlineData("- a # c\n  # deeper\n# of b\n- b\n", 1, "- a # c\n  # deeper\n- x\n# of b\n- b\n")]
    [InlineData("- a\n\n- b\n", 2, "- a\n\n- b\n\n- x\n")]
    [InlineData("- a\n\n- b\n", 1, "- a\n\n- x\n\n- b\n")]
    [InlineData("- a\n\n- b\n", 0, "- x\n\n- a\n\n- b\n")]
    [InlineData("# list\n\n# of a\n- a\n", 0, "# list\n\n- x\n# of a\n- a\n")]
    [InlineData("- a\n- b", 2, "- a\n- b\n- x")]
    [InlineData("- a\r\n- b\r\n", 1, "- a\r\n- x\r\n- b\r\n")]
    [InlineData("- - a\n", 1, "- - a\n- x\n")]
    [InlineData("[]\n", 0, "[x]\n")]
    [InlineData("[a, b]\n", 1, "[a, x, b]\n")]
    [InlineData("[a, b]\n", 2, "[a, b, x]\n")]
    [InlineData("[a, b, ]\n", 2, "[a, b, x, ]\n")]
    [InlineData("[\n  a, # c\n  b # d\n]\n", 2, "[\n  a, # c\n  b, # d\n  x\n]\n")]
    [InlineData("[\n  a, # c\n  b # d\n]\n", 0, "[\n  x,\n  a, # c\n  b # d\n]\n")]
    [InlineData("", 0, "- x\n")]
    public void An_item_is_added_in_its_place(string text, int index, string expected) => Edited.Insert(text, "/", index, "x").ShouldBe(expected);

    [Theory]
    [InlineData("- - a\n  - b\n", "- - x\n  - a\n  - b\n")]
    [InlineData("-\n  - a\n", "-\n  - x\n  - a\n")]
    public void An_inner_list_takes_a_first_item_on_its_shared_line(string text, string expected) =>
        Edited.Insert(text, "/0", 0, "x").ShouldBe(expected);

    [Theory]
    [InlineData("circuits: [] # none yet\n", "circuits: # none yet\n  - space: 1\n")]
    [InlineData("circuits: []\nscenarios: []\n", "circuits:\n  - space: 1\nscenarios: []\n")]
    [InlineData("circuits:\n", "circuits:\n  - space: 1\n")]
    [InlineData("circuits: # none yet\nx: 1\n", "circuits: # none yet\n  - space: 1\nx: 1\n")]
    [InlineData("x:\n- 1\ncircuits: []\n", "x:\n- 1\ncircuits:\n- space: 1\n")]
    [InlineData("circuits: []", "circuits:\n  - space: 1")]
    [InlineData("circuits: [ # c\n]\n", "circuits: [ # c\n{space: 1}]\n")]
    [InlineData("{circuits: []}\n", "{circuits: [{space: 1}]}\n")]
    public void The_first_circuit_makes_an_empty_list_one_of_lines(string text, string expected) =>
        Edited.Insert(text, "/circuits", 0, Circuit).ShouldBe(expected);

    [Fact]
    public void A_first_single_value_stays_in_the_brackets() =>
        Edited.Insert("running: [] # c\n", "/running", 0, "pump").ShouldBe("running: [pump] # c\n");

    [Theory]
    [InlineData("- a\n- b\n", 0, "- b\n")]
    [InlineData("- a\n# of b\n- b # c\n  # deeper\n# after\n", 1, "- a\n# after\n")]
    [InlineData("- a\n\n- b\n\n- c\n", 1, "- a\n\n- c\n")]
    [InlineData("- a\n\n- b\n", 1, "- a\n")]
    [InlineData("- a\n\n- b\n", 0, "- b\n")]
    [InlineData("- a\n- b\n\n- c\n", 1, "- a\n\n- c\n")]
    [InlineData("- a\n- b", 1, "- a")]
    [InlineData("- a # c\n", 0, "[] # c\n")]
    [InlineData("[a, b]\n", 0, "[b]\n")]
    [InlineData("[a]\n", 0, "[]\n")]
    [InlineData("[a, # c\n b]\n", 0, "[ # c\n b]\n")]
    [InlineData("[\n  a,\n  b, # c\n  d\n]\n", 1, "[\n  a,\n  d\n]\n")]
    public void An_item_goes_with_what_belongs_to_it(string text, int index, string expected) => Edited.RemoveItem(text, "/", index).ShouldBe(expected);

    [Theory]
    [InlineData("l: # c\n  # of the list\n  - a\nx: 1\n", "l: [] # c\n  # of the list\nx: 1\n")]
    [InlineData("l:\n- a\n  # deeper\nx: 1\n", "l: []\nx: 1\n")]
    public void The_only_item_leaves_empty_brackets(string text, string expected) => Edited.RemoveItem(text, "/l", 0).ShouldBe(expected);

    [Theory]
    [InlineData("l: 1\n", "/l is not a list")]
    [InlineData("l: [1]\n", "there is no /l/5 in the file")]
    public void What_is_no_item_is_told(string text, string expected) =>
        Edited.Refusal(() => Edited.RemoveItem(text, "/l", 5)).ShouldBe(expected);
}
