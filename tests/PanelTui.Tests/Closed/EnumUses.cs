using System.Collections.Frozen;
using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PanelTui.Tests.Closed;

/// <summary>A place in the sources that would answer for a member of an enum that it does not name.</summary>
internal sealed record OpenEnd(string File, int Line, string What)
{
    public override string ToString() => $"{File}:{Line}: {What}";
}

/// <summary>
/// The enums of a set of sources and what is decided by their members, read from the syntax: members are always written
/// as `Enum.Member`, or alone below `using static`.
/// </summary>
internal sealed class EnumUses
{
    private readonly ImmutableArray<SyntaxTree> _trees;
    private readonly FrozenDictionary<string, ImmutableArray<string>> _members;

    /// <param name="trees">The sources.</param>
    /// <param name="added">A member that every enum is to have besides its own; null for none.</param>
    public EnumUses(ImmutableArray<SyntaxTree> trees, string? added = null)
    {
        _trees = trees;
        _members = trees.SelectMany(tree => tree.GetRoot().DescendantNodes(node => node is not BaseMethodDeclarationSyntax))
            .OfType<EnumDeclarationSyntax>()
            .ToFrozenDictionary(
                one => one.Identifier.Text,
                one => one.Members.Select(member => member.Identifier.Text)
                    .Concat(added is null ? [] : [added]).ToImmutableArray());
    }

    public IEnumerable<string> Names => _members.Keys;

    /// <summary>Switches that leave a member out, or answer for any other member with a value.</summary>
    public IEnumerable<OpenEnd> OpenSwitches =>
        from tree in _trees
        from node in tree.GetRoot().DescendantNodes()
        let arms = ArmsOf(node)
        where arms.Length > 0
        from what in Missing(arms, StaticEnums(tree)).Concat(Open(arms, StaticEnums(tree)))
        select At(node, what);

    /// <summary>Ternaries and chains of `if` that choose words by a member of an enum.</summary>
    public IEnumerable<OpenEnd> WordsByComparison =>
        from tree in _trees
        from node in tree.GetRoot().DescendantNodes()
        where node switch
        {
            ConditionalExpressionSyntax choice => (IsText(choice.WhenTrue) || IsText(choice.WhenFalse))
                && EnumsIn(choice.Condition, StaticEnums(tree)).Any(),
            BlockSyntax block => HasChain(block, StaticEnums(tree)),
            _ => false,
        }
        select At(node, "words are chosen by a comparison with a member: use a switch, or a word of the enum");

    /// <summary>Comparisons of a value with a member of one enum, anywhere but in a switch.</summary>
    public IEnumerable<OpenEnd> ComparisonsWith(string name) =>
        from tree in _trees
        from node in tree.GetRoot().DescendantNodes()
        where node is BinaryExpressionSyntax { OperatorToken.RawKind: var sign } && IsComparison((SyntaxKind)sign)
            || node is ConstantPatternSyntax && !node.Ancestors().Any(IsArm)
        where node.ChildNodes().Any(child => MembersIn(child, StaticEnums(tree), below: false).Any(one => one.Enum == name))
        select At(node, $"a comparison with one {name} answers for all that come later: use a switch");

    private static bool IsComparison(SyntaxKind sign) => sign is SyntaxKind.EqualsEqualsToken
        or SyntaxKind.ExclamationEqualsToken or SyntaxKind.LessThanToken or SyntaxKind.LessThanEqualsToken
        or SyntaxKind.GreaterThanToken or SyntaxKind.GreaterThanEqualsToken;

    private static bool IsArm(SyntaxNode node) => node is SwitchExpressionArmSyntax or SwitchLabelSyntax;

    private sealed record Arm(SyntaxNode Pattern, bool IsGuarded, bool Throws);

    private static ImmutableArray<Arm> ArmsOf(SyntaxNode node) => node switch
    {
        SwitchExpressionSyntax choice =>
            [.. choice.Arms.Select(arm => new Arm(arm.Pattern, arm.WhenClause is not null, arm.Expression is ThrowExpressionSyntax))],
        SwitchStatementSyntax choice =>
        [
            .. choice.Sections.SelectMany(section => section.Labels.Select(label => new Arm(
                label is CasePatternSwitchLabelSyntax pattern ? pattern.Pattern : label,
                label is CasePatternSwitchLabelSyntax { WhenClause: not null },
                section.Statements.Last() is ThrowStatementSyntax))),
        ],
        _ => [],
    };

    private IEnumerable<string> Missing(ImmutableArray<Arm> arms, ImmutableArray<string> statics) =>
        from one in arms.SelectMany(arm => MembersIn(arm.Pattern, statics)).GroupBy(one => one.Enum)
        let missing = _members[one.Key].Except(one.Select(member => member.Member)).ToList()
        where missing.Count > 0
        select $"a switch over {one.Key} does not name {string.Join(", ", missing)}";

    private IEnumerable<string> Open(ImmutableArray<Arm> arms, ImmutableArray<string> statics) =>
        arms.Any(arm => MembersIn(arm.Pattern, statics).Any())
            ? arms.Where(arm => !arm.IsGuarded && !arm.Throws && IsDiscard(arm.Pattern))
                .Select(arm => $"`{arm.Pattern}` answers with a value for a member of an enum that has no case")
            : [];

    private static bool IsDiscard(SyntaxNode pattern) =>
        pattern is DiscardPatternSyntax or VarPatternSyntax or DefaultSwitchLabelSyntax;

    private bool HasChain(BlockSyntax block, ImmutableArray<string> statics)
    {
        var before = ImmutableArray<string>.Empty;
        foreach (var statement in block.Statements)
        {
            ImmutableArray<string> here = statement is IfStatementSyntax choice && AnswersWithText(choice.Statement)
                ? [.. EnumsIn(choice.Condition, statics)]
                : [];
            if (here.Intersect(before).Any()) return true;
            before = here;
        }

        return false;
    }

    private static bool AnswersWithText(StatementSyntax statement) => statement switch
    {
        ReturnStatementSyntax answer => answer.Expression is { } value && IsText(value),
        YieldStatementSyntax answer => answer.Expression is { } value && IsText(value),
        BlockSyntax { Statements: [.., var last] } => AnswersWithText(last),
        _ => false,
    };

    private static bool IsText(ExpressionSyntax answer) => answer is InterpolatedStringExpressionSyntax
        || answer.IsKind(SyntaxKind.StringLiteralExpression)
        || (answer is ParenthesizedExpressionSyntax inner && IsText(inner.Expression))
        || (answer is BinaryExpressionSyntax sum && (IsText(sum.Left) || IsText(sum.Right)));

    private IEnumerable<string> EnumsIn(SyntaxNode node, ImmutableArray<string> statics) =>
        MembersIn(node, statics).Select(one => one.Enum).Distinct();

    private IEnumerable<(string Enum, string Member)> MembersIn(
        SyntaxNode node, ImmutableArray<string> statics, bool below = true) =>
        from part in below ? node.DescendantNodesAndSelf() : [node]
        let member = part switch
        {
            MemberAccessExpressionSyntax access => (Last(access.Expression), access.Name.Identifier.Text),
            QualifiedNameSyntax access => (Last(access.Left), access.Right.Identifier.Text),
            IdentifierNameSyntax { Parent: not MemberAccessExpressionSyntax } alone =>
                (statics.FirstOrDefault(name => _members[name].Contains(alone.Identifier.Text)) ?? "", alone.Identifier.Text),
            _ => ("", ""),
        }
        where _members.TryGetValue(member.Item1, out var members) && members.Contains(member.Item2)
        select (member.Item1, member.Item2);

    private static string Last(SyntaxNode name) => name switch
    {
        MemberAccessExpressionSyntax access => access.Name.Identifier.Text,
        QualifiedNameSyntax access => access.Right.Identifier.Text,
        SimpleNameSyntax simple => simple.Identifier.Text,
        _ => "",
    };

    private ImmutableArray<string> StaticEnums(SyntaxTree tree) =>
    [
        .. ((CompilationUnitSyntax)tree.GetRoot()).Usings
            .Where(one => one.StaticKeyword.IsKind(SyntaxKind.StaticKeyword))
            .Select(one => Last(one.Name!))
            .Where(_members.ContainsKey),
    ];

    private static OpenEnd At(SyntaxNode node, string what) => new(
        Path.GetRelativePath(SourceTree.Root, node.SyntaxTree.FilePath).Replace('\\', '/'),
        node.GetLocation().GetLineSpan().StartLinePosition.Line + 1,
        what);
}
