using Microsoft.CodeAnalysis;

namespace PanelTui.Tests.CanFail;

/// <summary>Every test asserts something, and none passes because a list it goes through is empty.</summary>
public class CanFailTests
{
    private static readonly string[] Projects = ["PanelTui.Engine.Tests", "PanelTui.Documents.Tests", "PanelTui.Tests"];

    private static readonly Dictionary<string, Lazy<IReadOnlyList<SyntaxNode>>> Code =
        Projects.ToDictionary(project => project, project =>
            new Lazy<IReadOnlyList<SyntaxNode>>(() => TestCode.Of($"tests/{project}")));

    public static TheoryData<string> Folders => [.. Projects];

    [Theory, MemberData(nameof(Folders))]
    public void Every_test_asserts_something(string project)
    {
        Code[project].Value.ShouldNotBeEmpty();
        string.Join('\n', TestCode.WithoutAssertion(Code[project].Value)).ShouldBeEmpty();
    }

    [Theory, MemberData(nameof(Folders))]
    public void A_check_of_each_member_fails_where_there_is_none(string project)
    {
        Code[project].Value.ShouldNotBeEmpty();
        string.Join('\n', Code[project].Value.SelectMany(TestCode.MayCheckNothing))
            .ShouldBeEmpty("these pass on an empty list: add .AtLeastOne(), or .Lines() for a text");
    }

    [Theory]
    [InlineData("foreach (var rule in RuleBook.All) rule.Name.ShouldNotBeNull();")]
    [InlineData("foreach (var rule in RuleBook.All) Helper(rule);")]
    [InlineData("foreach (var rule in empty) rule.Name.ShouldNotBeNull();")]
    [InlineData("foreach (var (a, b) in rules.Zip(rules)) a.ShouldBe(b);")]
    [InlineData("foreach (var rule in new[] { 1 }.Where(one => one > 1)) rule.ShouldBe(1);")]
    [InlineData("foreach (var name in Perhaps()) name.ShouldNotBeNull();")]
    [InlineData("foreach (var name in isLong ? full : []) name.ShouldNotBeNull();")]
    [InlineData("RuleBook.All.ShouldAllBe(rule => rule.Name != null);")]
    [InlineData("output.Split('\\n').ShouldAllBe(line => line.Length <= 80);")]
    [InlineData("output.Split('\\n').AtLeastOne().ShouldAllBe(line => line.Length <= 80);")]
    [InlineData("rules.Count.ShouldBe(0); rules.ShouldAllBe(rule => rule.Name != null);")]
    public void A_list_that_may_be_empty_is_found(string body) =>
        TestCode.MayCheckNothing(Test(body)).ShouldHaveSingleItem().ShouldStartWith("Example.cs:");

    [Theory]
    [InlineData("foreach (var rule in RuleBook.All.AtLeastOne()) rule.Name.ShouldNotBeNull();")]
    [InlineData("foreach (var name in (string[])[\"a\", \"b\"]) name.ShouldNotBeNull();")]
    [InlineData("foreach (var name in full) name.ShouldNotBeNull();")]
    [InlineData("foreach (var rule in rules) total += rule.Count;")]
    [InlineData("foreach (var columns in Enumerable.Range(40, 80)) columns.ShouldBe(40);")]
    [InlineData("rules.ShouldNotBeEmpty(); rules.ShouldAllBe(rule => rule.Name != null);")]
    [InlineData("rules.ShouldAllBe(rule => rule.Name != null); rules.Count.ShouldBe(72);")]
    [InlineData("foreach (var name in Both(\"a\")) name.ShouldNotBeNull();")]
    [InlineData("foreach (var name in more.Concat(Yielded())) name.ShouldNotBeNull();")]
    [InlineData("foreach (var name in isLong ? full : [\"b\"]) name.ShouldNotBeNull();")]
    [InlineData("output.Lines().ShouldAllBe(line => line.Length <= 80);")]
    public void A_list_that_has_a_member_is_not(string body) => TestCode.MayCheckNothing(Test(body)).ShouldBeEmpty();

    [Fact]
    public void A_test_that_only_runs_something_is_found()
    {
        TestCode.WithoutAssertion([Test("Run();")]).ShouldHaveSingleItem().ShouldEndWith(": A_claim");
        TestCode.WithoutAssertion([Test("Helper(1);")]).ShouldBeEmpty();
    }

    private static SyntaxNode Test(string body) => TestCode.Parsed(
        $$"""
        class Example
        {
            private static readonly string[] full = ["a"], empty = [];
            [Fact] public void A_claim() { {{body}} }
            private static string[] Both(string name) => [name, $"{name}s"];
            private static IEnumerable<string> Yielded() { var name = "a"; yield return name; }
            private static IEnumerable<string> Perhaps() { if (isLong) yield return "a"; }
            private static void Helper(object rule) => rule.ShouldNotBeNull();
        }
        """,
        "Example.cs");
}
