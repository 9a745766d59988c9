using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Yaml;

public class AliasesTests
{
    [Fact]
    public void An_alias_stands_for_the_value_it_names()
    {
        var tree = Trees.Of("a: &x 20 A\nb: *x\n");
        Aliases.Check(tree);
        Aliases.Resolve(tree.Node("/b")).ShouldBeSameAs(tree.Node("/a"));
    }

    [Fact]
    public void An_alias_names_the_last_value_so_marked_above_it()
    {
        var tree = Trees.Of("- &x 1\n- *x\n- &x 2\n- *x\n");
        Aliases.ItemsOf(tree.Root!).Select(node => node.Value).ShouldBe(["1", "1", "2", "2"]);
    }

    [Fact]
    public void Merged_entries_come_after_its_own_and_give_way_to_them()
    {
        var tree = Trees.Of("base: &b {breaker: 20 A, poles: 1}\none:\n  <<: *b\n  poles: 2\n");
        var entries = Aliases.EntriesOf(tree.Node("/one"));
        entries.Select(entry => $"{entry.Key}={entry.Value.Value} {entry.IsMerged}").ShouldBe(["poles=2 False", "breaker=20 A True"]);
        tree.Source.PositionOf(entries[1].Pair.Key.Span.Start).Line.ShouldBe(1);
    }

    [Fact]
    public void Of_several_merged_mappings_the_earlier_counts()
    {
        var tree = Trees.Of("a: &a {x: 1}\nb: &b {x: 2, y: 3}\nc: {<<: [*a, *b]}\n");
        Aliases.EntriesOf(tree.Node("/c")).Select(entry => entry.Value.Value).ShouldBe(["1", "3"]);
    }

    [Fact]
    public void A_quoted_merge_key_is_an_ordinary_key() =>
        Aliases.EntriesOf(Trees.Of("'<<': 1\n").Root!).Single().Key.ShouldBe("<<");

    [Theory]
    [InlineData("a: &a {b: *a}\n", "1:11: the alias *a contains itself")]
    [InlineData("a: &a [1, [*a]]\n", "1:12: the alias *a contains itself")]
    [InlineData("a: &a 5\nb: {<<: *a}\n", "2:9: << takes over the entries of a mapping; expected the *name of one, or a list of such names")]
    [InlineData("b: {<<: }\n", "1:8: << takes over the entries of a mapping; expected the *name of one, or a list of such names")]
    public void What_makes_no_sense_is_told_with_its_place(string text, string expected) =>
        Trees.Problem(() => Aliases.Check(Trees.Of(text))).ShouldBe(expected);

    [Fact]
    public void A_billion_laughs_are_counted_not_laughed()
    {
        var lines = Enumerable.Range(1, 8).Select(level => $"a{level}: &a{level} [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 9))}]");
        var tree = Trees.Of($"a0: &a0 lol\n{string.Join('\n', lines)}\n");
        Trees.Problem(() => Aliases.Check(tree)).ShouldContain("more than 100,000 values after the aliases are filled in");
    }

    [Fact]
    public void A_merge_bomb_is_refused_alike()
    {
        var lines = Enumerable.Range(1, 8).Select(level => $"a{level}: &a{level} {{<<: [{string.Join(", ", Enumerable.Repeat($"*a{level - 1}", 9))}]}}");
        var tree = Trees.Of($"a0: &a0 {{x: lol}}\n{string.Join('\n', lines)}\n");
        Trees.Problem(() => Aliases.Check(tree)).ShouldContain("more than 100,000 values after the aliases are filled in");
    }

    [Fact]
    public void Aliases_that_nest_ever_deeper_are_refused()
    {
        var lines = Enumerable.Range(1, 200).Select(level => $"a{level}: &a{level} [*a{level - 1}]");
        var tree = Trees.Of($"a0: &a0 x\n{string.Join('\n', lines)}\n");
        Trees.Problem(() => Aliases.Check(tree)).ShouldContain("values are nested deeper than 64 levels after the aliases are filled in");
    }
}
