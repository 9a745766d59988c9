using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PanelTui.Tests.CanFail;

/// <summary>Tells from the code alone that a list has a member.</summary>
internal static class FullList
{
    private static readonly string[] SameLength =
        ["Select", "Order", "OrderBy", "Reverse", "ToList", "ToArray", "Distinct", "Index", "Append"];

    /// <summary>
    /// True when the list is written out, or a check before it, or around it, fails where it is empty.
    /// </summary>
    public static bool IsSure(ExpressionSyntax list) => list switch
    {
        ParenthesizedExpressionSyntax inner => IsSure(inner.Expression),
        CastExpressionSyntax cast => IsSure(cast.Expression),
        CollectionExpressionSyntax written =>
            written.Elements.Any(element => element is not SpreadElementSyntax spread || IsSure(spread.Expression)),
        ImplicitArrayCreationExpressionSyntax written => written.Initializer.Expressions.Count > 0,
        ArrayCreationExpressionSyntax written => written.Initializer is { Expressions.Count: > 0 },
        BaseObjectCreationExpressionSyntax written => written.Initializer is { Expressions.Count: > 0 }
            || IsAsserted(list),
        ConditionalExpressionSyntax either => IsSure(either.WhenTrue) && IsSure(either.WhenFalse),
        InvocationExpressionSyntax call => IsSureCall(call),
        IdentifierNameSyntax name => IsWrittenOut(name) || IsAsserted(list),
        _ => IsAsserted(list),
    };

    private static bool IsSureCall(InvocationExpressionSyntax call)
    {
        var arguments = call.ArgumentList.Arguments;
        return TestCode.Name(call) switch
        {
            // A text without a line is split into one that is empty.
            "AtLeastOne" => On(call) is not InvocationExpressionSyntax inner || TestCode.Name(inner) != "Split"
                || inner.ToString().Contains("RemoveEmptyEntries"),
            "Lines" or "ShouldNotBeEmpty" or "GetValues" => true,
            "Range" or "Repeat" => arguments.Count == 2 && IsPositive(arguments[1].Expression),
            "Concat" => (On(call) is { } first && IsSure(first))
                || arguments.Any(argument => IsSure(argument.Expression)),
            var name when SameLength.Contains(name) && On(call) is { } list => IsSure(list),
            var name => IsAsserted(call) || (On(call) is null && IsMadeFull(call.SyntaxTree.GetRoot(), name)),
        };
    }

    private static ExpressionSyntax? On(InvocationExpressionSyntax call) =>
        (call.Expression as MemberAccessExpressionSyntax)?.Expression;

    /// <summary>True when the name stands for a list that is written out in the same file.</summary>
    private static bool IsWrittenOut(IdentifierNameSyntax name)
    {
        var scope = name.FirstAncestorOrSelf<MemberDeclarationSyntax>();
        var file = name.SyntaxTree.GetRoot();
        var values = file.DescendantNodes().Select(node => (Node: node, Value: ValueOf(node, name.Identifier.Text)))
            .Where(found => found.Value is not null).ToList();
        var near = values.Where(found => scope!.Contains(found.Node)).ToList();
        var chosen = near.Count > 0 ? near : values;
        return chosen.Count > 0 && chosen.All(found => IsSure(found.Value!));
    }

    /// <summary>
    /// True when every method of the file with this name returns a list that is written out, or yields a member in
    /// any case.
    /// </summary>
    private static bool IsMadeFull(SyntaxNode file, string name)
    {
        var methods = file.DescendantNodes().OfType<MethodDeclarationSyntax>()
            .Where(method => method.Identifier.Text == name).ToList();
        return methods.Count > 0 && methods.All(method => method switch
        {
            { ExpressionBody.Expression: var list } => IsSure(list),
            { Body.Statements: var statements } =>
                statements.TakeWhile(one => one is not ReturnStatementSyntax and not IfStatementSyntax)
                .Any(one => one is YieldStatementSyntax { Expression: not null }),
            _ => false,
        });
    }

    private static ExpressionSyntax? ValueOf(SyntaxNode node, string name) => node switch
    {
        VariableDeclaratorSyntax one when one.Identifier.Text == name => one.Initializer?.Value,
        PropertyDeclarationSyntax one when one.Identifier.Text == name =>
            one.ExpressionBody?.Expression ?? one.Initializer?.Value,
        _ => null,
    };

    /// <summary>True when the same member asserts that this list is not empty, or how many it has.</summary>
    private static bool IsAsserted(ExpressionSyntax list) =>
        list.FirstAncestorOrSelf<MemberDeclarationSyntax>() is { } member
        && TestCode.Calls(member).Any(call => On(call) is { } on && TestCode.Name(call) switch
        {
            "ShouldNotBeEmpty" => IsSame(on, list),
            "ShouldBe" or "ShouldBeGreaterThan" =>
                on is MemberAccessExpressionSyntax { Name.Identifier.Text: "Count" or "Length" } count
                && IsSame(count.Expression, list) && IsPositive(call.ArgumentList.Arguments[0].Expression),
            _ => false,
        });

    private static bool IsPositive(ExpressionSyntax number) => number is LiteralExpressionSyntax { Token.Value: > 0 };

    private static bool IsSame(ExpressionSyntax one, ExpressionSyntax other) => one.ToString() == other.ToString();
}
