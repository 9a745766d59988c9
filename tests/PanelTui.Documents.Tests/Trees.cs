using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests;

/// <summary>Short ways from a text to its tree, for tests.</summary>
internal static class Trees
{
    public static YamlTree Of(string text) => YamlTree.Parse(SourceText.FromString(text));

    /// <summary>A path such as <c>/circuits/3/breaker</c>; digits are an index.</summary>
    public static YamlPath Path(string path) => YamlPath.Of(
        [.. path.Split('/', StringSplitOptions.RemoveEmptyEntries).Select(step => int.TryParse(step, out var index) ? (YamlStep)index : step)]);

    public static YamlNode Node(this YamlTree tree, string path) => Path(path).Find(tree).ShouldNotBeNull();

    /// <summary>The node's own characters.</summary>
    public static string Written(this YamlTree tree, string path) => tree.Source.Slice(tree.Node(path).Span);

    /// <summary>The problem as a command line prints it.</summary>
    public static string Problem(Action read)
    {
        var problem = Should.Throw<YamlProblem>(read);
        return $"{problem.Position}: {problem.Message}";
    }

    /// <summary>The path of a value of a tree; of a mapping's key it is the path of its value.</summary>
    public static YamlPath PathTo(YamlNode node)
    {
        var steps = new Stack<YamlStep>();
        for (var parent = node.Parent; parent is not null; (node, parent) = (parent, parent.Parent))
            steps.Push(StepTo(parent, node));
        return YamlPath.Of([.. steps]);
    }

    private static YamlStep StepTo(YamlNode parent, YamlNode child)
    {
        foreach (var pair in parent.Pairs)
        {
            if (pair.Value == child || pair.Key == child) return pair.Key.Value;
        }

        return parent.Items.Select(item => item.Value).ToList().IndexOf(child);
    }
}
