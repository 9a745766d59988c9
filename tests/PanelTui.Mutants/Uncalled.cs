using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace PanelTui.Mutants;

/// <summary>
/// The members of the program that no code of the program names, whatever the tests do. Values of a record may be there to
/// be compared, and operators come in pairs: both are listed apart.
/// </summary>
internal sealed class Uncalled
{
    private readonly string _root;
    private readonly CSharpCompilation _program;
    private readonly Dictionary<ISymbol, SyntaxNode> _declared = new(SymbolEqualityComparer.Default);
    private readonly Dictionary<ISymbol, HashSet<SyntaxNode>> _named = new(SymbolEqualityComparer.Default);

    public Uncalled(string root)
    {
        _root = root;
        var trees = Directory.GetFiles(Path.Combine(root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(file => !Path.GetRelativePath(root, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"))
            .Select(file => CSharpSyntaxTree.ParseText(File.ReadAllText(file), path: file))
            .Append(CSharpSyntaxTree.ParseText(ImplicitUsings));
        _program = CSharpCompilation.Create(
            "program", trees, References(), new(OutputKind.ConsoleApplication, allowUnsafe: true));
    }

    public IEnumerable<string> Lines()
    {
        foreach (var tree in _program.SyntaxTrees) Read(tree);
        return
            from member in _declared
            where IsListed(member.Key) && !IsNamed(member.Key, member.Value)
            let place = member.Value.GetLocation().GetLineSpan()
            orderby place.Path, place.StartLinePosition
            select $"{Path.GetRelativePath(_root, place.Path)}:{place.StartLinePosition.Line + 1}: "
                + $"{KindOf(member.Key, member.Value)}{member.Key.ToDisplayString(SymbolDisplayFormat.CSharpShortErrorMessageFormat)}";
    }

    private const string ImplicitUsings =
        "global using System; global using System.IO; global using System.Linq; global using System.Collections.Generic; "
        + "global using System.Threading; global using System.Threading.Tasks; global using System.Net.Http;";

    private IEnumerable<MetadataReference> References()
    {
        var built = Path.Combine(_root, "src", "PanelTui", "bin", "Release", "net10.0");
        if (!Directory.Exists(built)) throw new DirectoryNotFoundException("Build the program first: dotnet build -c Release src/PanelTui");
        return ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Concat(Directory.GetFiles(built, "*.dll"))
            .Where(path => !Path.GetFileName(path).StartsWith("PanelTui", StringComparison.OrdinalIgnoreCase))
            .GroupBy(Path.GetFileName)
            .Select(paths => MetadataReference.CreateFromFile(paths.First()));
    }

    private void Read(SyntaxTree tree)
    {
        var model = _program.GetSemanticModel(tree);
        foreach (var node in tree.GetRoot().DescendantNodes())
        {
            foreach (var (symbol, place) in Declared(node, model)) _declared[symbol.OriginalDefinition] = place;
            foreach (var symbol in Named(node, model)) Note(symbol, node);
        }
    }

    private static IEnumerable<(ISymbol Symbol, SyntaxNode Place)> Declared(SyntaxNode node, SemanticModel model) => node switch
    {
        BaseNamespaceDeclarationSyntax or GlobalStatementSyntax => [],
        BaseFieldDeclarationSyntax field =>
            field.Declaration.Variables.Select(one => (model.GetDeclaredSymbol(one)!, (SyntaxNode)one)),
        MemberDeclarationSyntax member when model.GetDeclaredSymbol(member) is { } symbol => [(symbol, member)],
        ParameterSyntax { Parent.Parent: RecordDeclarationSyntax } value when model.GetDeclaredSymbol(value) is IParameterSymbol symbol =>
            symbol.ContainingType.GetMembers(symbol.Name).OfType<IPropertySymbol>().Select(property => ((ISymbol)property, (SyntaxNode)value)),
        _ => [],
    };

    private static IEnumerable<ISymbol> Named(SyntaxNode node, SemanticModel model)
    {
        var info = node switch
        {
            ExpressionSyntax expression => model.GetSymbolInfo(expression),
            ConstructorInitializerSyntax initializer => model.GetSymbolInfo(initializer),
            PrimaryConstructorBaseTypeSyntax type => model.GetSymbolInfo(type),
            AttributeSyntax attribute => model.GetSymbolInfo(attribute),
            SelectOrGroupClauseSyntax clause => model.GetSymbolInfo(clause),
            OrderingSyntax ordering => model.GetSymbolInfo(ordering),
            _ => default,
        };
        if ((info.Symbol ?? info.CandidateSymbols.FirstOrDefault()) is { } named) yield return named;
        if (node is ExpressionSyntax converted && model.GetConversion(converted) is { IsUserDefined: true, MethodSymbol: { } conversion })
            yield return conversion;
        if (node is QueryClauseSyntax query && model.GetQueryClauseInfo(query).OperationInfo.Symbol is { } operation) yield return operation;
        if (node is CommonForEachStatementSyntax loop && model.GetForEachStatementInfo(loop) is { GetEnumeratorMethod: { } walk }) yield return walk;
    }

    private void Note(ISymbol symbol, SyntaxNode node)
    {
        var named = Definition(symbol);
        if (!_named.TryGetValue(named, out var places)) _named[named] = places = [];
        places.Add(node.AncestorsAndSelf().FirstOrDefault(IsMember) ?? node);
    }

    private static ISymbol Definition(ISymbol symbol) => symbol.OriginalDefinition switch
    {
        IMethodSymbol { ReducedFrom: { } whole } => Definition(whole),
        IMethodSymbol { AssociatedSymbol: { } property } => property.OriginalDefinition,
        IMethodSymbol { PartialImplementationPart: { } body } => body,
        var other => other,
    };

    private static bool IsMember(SyntaxNode node) =>
        node is MemberDeclarationSyntax and not BaseTypeDeclarationSyntax and not BaseNamespaceDeclarationSyntax;

    private static bool IsListed(ISymbol symbol) => symbol switch
    {
        { IsOverride: true } or { Name: "Main" } => false,
        INamedTypeSymbol { IsStatic: true } or INamedTypeSymbol { TypeKind: TypeKind.Enum } => false,
        IMethodSymbol { MethodKind: MethodKind.Constructor, DeclaredAccessibility: Accessibility.Private } => false,
        IMethodSymbol { MethodKind: MethodKind.StaticConstructor or MethodKind.ExplicitInterfaceImplementation } => false,
        _ => !Implements(symbol) && !symbol.GetAttributes().Any(one => one.AttributeClass?.Name == "ModuleInitializerAttribute"),
    };

    private static bool Implements(ISymbol symbol) => symbol.ContainingType is { TypeKind: not TypeKind.Interface } type
        && type.AllInterfaces.SelectMany(face => face.GetMembers())
            .Any(member => SymbolEqualityComparer.Default.Equals(type.FindImplementationForInterfaceMember(member), symbol));

    private bool IsNamed(ISymbol symbol, SyntaxNode place)
    {
        var own = place.AncestorsAndSelf().OfType<MemberDeclarationSyntax>().First();
        return IsNamedOutside(symbol, own)
            || (symbol is INamedTypeSymbol type && type.GetMembers().Any(member => IsNamedOutside(member, own)));
    }

    private bool IsNamedOutside(ISymbol symbol, SyntaxNode own) => _named.TryGetValue(symbol.OriginalDefinition, out var places)
        && places.Any(one => one != own && !(own is BaseTypeDeclarationSyntax && symbol is INamedTypeSymbol && own.Contains(one)));

    private static string KindOf(ISymbol symbol, SyntaxNode place) =>
        symbol is IMethodSymbol { MethodKind: MethodKind.UserDefinedOperator } ? "(one of a pair) "
        : place is ParameterSyntax ? "(a value of a record) "
        : "";
}
