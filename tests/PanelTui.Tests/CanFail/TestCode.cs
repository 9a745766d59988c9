using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PanelTui.Tests.CanFail;

/// <summary>The C# of the tests as syntax: what asserts, and which checks could pass on an empty list.</summary>
internal static class TestCode
{
    /// <summary>The files of one test project, with those it shares.</summary>
    public static IReadOnlyList<SyntaxNode> Of(string folder) =>
        [.. SourceTree.Files(folder).Concat(SourceTree.Files("tests/Shared")).AsParallel().AsOrdered().Select(Parsed)];

    public static SyntaxNode Parsed(string file) =>
        Parsed(File.ReadAllText(file), Path.GetRelativePath(SourceTree.Root, file));

    public static SyntaxNode Parsed(string text, string name) => CSharpSyntaxTree.ParseText(text, path: name).GetRoot();

    /// <summary>True for a call that fails a test by itself: Shouldly's, xunit's, CsCheck's.</summary>
    public static bool IsAssertion(InvocationExpressionSyntax call) =>
        call.Expression is MemberAccessExpressionSyntax member
        && (Name(call).StartsWith("Should", StringComparison.Ordinal)
            || member.Expression is IdentifierNameSyntax { Identifier.Text: "Assert" or "Should" }
            || Name(call) is "Sample" or "SampleAsync" or "SampleModelBased" or "AtLeastOne");

    /// <summary>The methods that assert, or call one that does, as `Method` and as `Type.Method`.</summary>
    public static HashSet<string> Asserting(IReadOnlyList<SyntaxNode> files)
    {
        var methods = files.SelectMany(Bodies).ToList();
        var asserting = new HashSet<string>();
        while (methods.RemoveAll(method =>
            method.Calls.Any(call => IsAssertion(call) || Targets(call).Any(asserting.Contains))
            && Added(asserting, method.Type, method.Name)) > 0) continue;
        return asserting;
    }

    /// <summary>The tests in which nothing can fail.</summary>
    public static IEnumerable<string> WithoutAssertion(IReadOnlyList<SyntaxNode> files)
    {
        var asserting = Asserting(files);
        return files.SelectMany(file => file.DescendantNodes().OfType<MethodDeclarationSyntax>())
            .Where(IsTest)
            .Where(test => !asserting.Contains($"{TypeOf(test)}.{test.Identifier.Text}"))
            .Select(test => Place(test, test.Identifier.Text));
    }

    /// <summary>The checks of each member of a list that nothing keeps from being empty.</summary>
    public static IEnumerable<string> MayCheckNothing(SyntaxNode file)
    {
        var asserting = Asserting([file]);
        var loops = file.DescendantNodes().OfType<CommonForEachStatementSyntax>()
            .Where(loop => Calls(loop.Statement)
                .Any(call => IsAssertion(call) || (IsOfTests(loop) && Targets(call).Any(asserting.Contains))))
            .Select(loop => (Node: (SyntaxNode)loop, List: loop.Expression));
        var sweeps = file.DescendantNodes().OfType<InvocationExpressionSyntax>()
            .Where(call => Name(call) == "ShouldAllBe")
            .Select(call => (Node: (SyntaxNode)call, List: ((MemberAccessExpressionSyntax)call.Expression).Expression));
        return loops.Concat(sweeps)
            .Where(check => !FullList.IsSure(check.List))
            .Select(check => Place(check.Node, check.List.ToString()));
    }

    public static IEnumerable<InvocationExpressionSyntax> Calls(SyntaxNode body) =>
        body.DescendantNodesAndSelf().OfType<InvocationExpressionSyntax>();

    /// <summary>The name of the method that is called, without what it is called on.</summary>
    public static string Name(InvocationExpressionSyntax call) => call.Expression switch
    {
        MemberAccessExpressionSyntax member => member.Name.Identifier.Text,
        MemberBindingExpressionSyntax member => member.Name.Identifier.Text,
        SimpleNameSyntax name => name.Identifier.Text,
        _ => "",
    };

    private static bool IsOfTests(SyntaxNode node) =>
        node.FirstAncestorOrSelf<TypeDeclarationSyntax>()!.Members.OfType<MethodDeclarationSyntax>().Any(IsTest);

    private static bool IsTest(MethodDeclarationSyntax method) =>
        method.AttributeLists.SelectMany(list => list.Attributes)
        .Any(attribute => attribute.Name.ToString() is "Fact" or "Theory");

    private static bool Added(HashSet<string> asserting, string type, string method) =>
        asserting.Add(method) | asserting.Add($"{type}.{method}");

    /// <summary>What a call may mean: a method of the type that is named, else any method of that name.</summary>
    private static IEnumerable<string> Targets(InvocationExpressionSyntax call) =>
        call.Expression is MemberAccessExpressionSyntax
        {
            Expression: IdentifierNameSyntax { Identifier.Text: [>= 'A' and <= 'Z', ..] type },
        }
            ? [$"{type}.{Name(call)}"]
            : [Name(call)];

    private static string TypeOf(SyntaxNode node) => node.FirstAncestorOrSelf<TypeDeclarationSyntax>()!.Identifier.Text;

    private static IEnumerable<(string Type, string Name, List<InvocationExpressionSyntax> Calls)> Bodies(
        SyntaxNode file) =>
        from node in file.DescendantNodes()
        let name = node switch
        {
            MethodDeclarationSyntax method => method.Identifier.Text,
            LocalFunctionStatementSyntax function => function.Identifier.Text,
            _ => null,
        }
        where name is not null
        select (TypeOf(node), name, Calls(node).ToList());

    private static string Place(SyntaxNode node, string what) =>
        $"{node.SyntaxTree.FilePath}:{node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}: {what}";
}
