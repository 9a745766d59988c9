using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Yaml;

public class YamlPathTests
{
    private const string Text = "circuits:\n- breaker: 20 A\n- {breaker: 15 A, loads: [a, b]}\n";

    [Fact]
    public void A_path_leads_through_keys_and_indices() =>
        YamlPath.Of("circuits", 1, "loads", 0).Find(Trees.Of(Text))!.Value.ShouldBe("a");

    [Theory]
    [InlineData("/circuits/2")]
    [InlineData("/circuits/breaker")]
    [InlineData("/circuits/0/breaker/x")]
    [InlineData("/none")]
    public void A_path_that_leads_nowhere_finds_nothing(string path) => Trees.Path(path).Find(Trees.Of(Text)).ShouldBeNull();

    [Fact]
    public void The_path_of_every_value_leads_back_to_it()
    {
        var tree = Trees.Of(Text);
        foreach (var node in tree.Root!.DescendantsAndSelf().Where(node => node.Parent?.Pairs.Any(pair => pair.Key == node) != true).AtLeastOne())
            Trees.PathTo(node).Find(tree).ShouldBeSameAs(node);
    }

    [Fact]
    public void A_path_reads_as_a_json_pointer()
    {
        YamlPath.Of("circuits", 3, "breaker").ToString().ShouldBe("/circuits/3/breaker");
        YamlPath.Of("a/b", "c~d").ToString().ShouldBe("/a~1b/c~0d");
        YamlPath.Root.ToString().ShouldBe("/");
    }

    [Fact]
    public void Paths_with_the_same_steps_are_equal()
    {
        YamlPath.Of("a", 1).ShouldBe(YamlPath.Of("a").Then(1));
        YamlPath.Of("a", 1).GetHashCode().ShouldBe(YamlPath.Of("a", 1).GetHashCode());
        YamlPath.Of("a", "1").ShouldNotBe(YamlPath.Of("a", 1));
        YamlPath.Of("a", 1).Parent.ShouldBe(YamlPath.Of("a"));
    }
}
