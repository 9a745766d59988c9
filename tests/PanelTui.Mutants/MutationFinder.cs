using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PanelTui.Mutants;

/// <summary>Every change of one operator, number, name or statement in a source.</summary>
internal static class MutationFinder
{
    private static readonly Dictionary<SyntaxKind, string> Operators = new()
    {
        [SyntaxKind.LessThanExpression] = "<=",
        [SyntaxKind.LessThanOrEqualExpression] = "<",
        [SyntaxKind.GreaterThanExpression] = ">=",
        [SyntaxKind.GreaterThanOrEqualExpression] = ">",
        [SyntaxKind.EqualsExpression] = "!=",
        [SyntaxKind.NotEqualsExpression] = "==",
        [SyntaxKind.AddExpression] = "-",
        [SyntaxKind.SubtractExpression] = "+",
        [SyntaxKind.MultiplyExpression] = "/",
        [SyntaxKind.DivideExpression] = "*",
        [SyntaxKind.LogicalAndExpression] = "||",
        [SyntaxKind.LogicalOrExpression] = "&&",
    };

    private static readonly Dictionary<string, string> Names = new()
    {
        ["Min"] = "Max",
        ["Max"] = "Min",
        ["MinBy"] = "MaxBy",
        ["MaxBy"] = "MinBy",
        ["Any"] = "All",
        ["All"] = "Any",
        ["First"] = "Last",
        ["FirstOrDefault"] = "LastOrDefault",
        ["OrderBy"] = "OrderByDescending",
        ["OrderByDescending"] = "OrderBy",
        ["Skip"] = "Take",
        ["Take"] = "Skip",
        ["StartsWith"] = "EndsWith",
        ["EndsWith"] = "StartsWith",
        ["TrimStart"] = "ToString",
        ["TrimEnd"] = "ToString",
    };

    public static IEnumerable<Mutation> In(SyntaxTree tree, string file) =>
        from node in tree.GetRoot().DescendantNodes()
        where !IsConstant(node)
        from mutated in Of(node)
        let place = tree.GetLineSpan(node.Span).StartLinePosition
        select new Mutation(
            file, place.Line + 1, node.SpanStart, node.Span.Length, node.ToString(), mutated, node is StatementSyntax);

    private static IEnumerable<string> Of(SyntaxNode node) => node switch
    {
        BinaryExpressionSyntax { RawKind: (int)SyntaxKind.CoalesceExpression } binary => [$"({binary.Right})"],
        BinaryExpressionSyntax binary when Operators.TryGetValue(binary.Kind(), out var other) && !Declares(binary) =>
            [$"({binary.Left}) {other} ({binary.Right})"],
        ConditionalExpressionSyntax choice when !Declares(choice.Condition) =>
            [$"({choice.Condition}) ? ({choice.WhenFalse}) : ({choice.WhenTrue})"],
        PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.LogicalNotExpression } not when !Declares(not) => [$"({not.Operand})"],
        LiteralExpressionSyntax { Token.Value: int and < 1_000_000 } number => [$"({number} + 1)"],
        LiteralExpressionSyntax { Token.Value: decimal } number => [$"({number} + 1m)"],
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.TrueLiteralExpression } => ["false"],
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.FalseLiteralExpression } => ["true"],
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name: IdentifierNameSyntax name } access } call
            when !Declares(call) => Calls(call, access, name.Identifier.Text),
        ExpressionStatementSyntax { Expression: InvocationExpressionSyntax } statement when !Declares(statement) => [";"],
        _ => [],
    };

    private static IEnumerable<string> Calls(InvocationExpressionSyntax call, MemberAccessExpressionSyntax access, string name)
    {
        if (name is "Where") yield return $"{access.Expression}";
        if (Names.TryGetValue(name, out var other)) yield return $"{access.Expression}.{other}{(other == "ToString" ? "()" : call.ArgumentList)}";
    }

    /// <summary>A name that it declares would have a value on one side of the switch alone.</summary>
    private static bool Declares(SyntaxNode node) => node.DescendantNodes(part => part is not LambdaExpressionSyntax)
        .Any(part => part is SingleVariableDesignationSyntax);

    /// <summary>Where C# wants a constant, or nothing is run.</summary>
    private static bool IsConstant(SyntaxNode node) => node.AncestorsAndSelf().Any(part => part switch
    {
        AttributeListSyntax or PatternSyntax or EnumMemberDeclarationSyntax or CaseSwitchLabelSyntax => true,
        EqualsValueClauseSyntax { Parent: ParameterSyntax } => true,
        FieldDeclarationSyntax field => field.Modifiers.Any(SyntaxKind.ConstKeyword),
        LocalDeclarationStatementSyntax local => local.IsConst,
        ThrowExpressionSyntax or ThrowStatementSyntax => true,
        _ => false,
    });
}
