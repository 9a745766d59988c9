using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using PanelTui.Engine.Codes;

namespace PanelTui.Tests.Closed;

/// <summary>
/// Nothing answers for a member of an enum that it does not name. The build asks for every member in a switch over an
/// enum (IDE0072, IDE0010); these tests hold what it does not: the last arm, tuples, and comparisons.
/// </summary>
public class ClosedEnumTests
{
    private static readonly ImmutableArray<SyntaxTree> Sources =
        [.. SourceTree.Files("src").Select(file => Parsed(File.ReadAllText(file), file))];

    private static readonly EnumUses AsTheyAre = new(Sources);

    private static readonly ImmutableArray<OpenEnd> WithAMemberMore = [.. new EnumUses(Sources, added: "Added").OpenSwitches];

    [Fact]
    public void A_switch_names_each_member_and_throws_for_any_other() =>
        AsTheyAre.OpenSwitches.Select(one => $"{one}").ShouldBeEmpty();

    [Fact]
    public void No_comparison_with_a_member_chooses_words() =>
        AsTheyAre.WordsByComparison.Select(one => $"{one}").ShouldBeEmpty();

    [Fact]
    public void Only_a_switch_says_what_an_edition_of_the_code_asks() =>
        AsTheyAre.ComparisonsWith(nameof(CodeEdition)).Select(one => $"{one}").ShouldBeEmpty();

    [Theory]
    [InlineData("CodeEdition", "StandardRatings.cs", "ApplianceFactor.cs", "VehicleCharging.cs", "GroundFaultNeed.cs", "CodeEdition.cs")]
    [InlineData("DemandMethodName", "DemandBasis.cs")]
    [InlineData("LoadKind", "Load.cs", "InFull.cs", "LoadSize.cs")]
    [InlineData("TransferKind", "TransferEquipment.cs", "SwitchingWay.cs", "NeverSteps.cs", "SourceCapacity.cs")]
    public void A_member_that_is_added_is_missed_wherever_its_enum_decides(string name, params string[] files)
    {
        var missed = WithAMemberMore
            .Where(one => one.What.Contains($"over {name} ", StringComparison.Ordinal))
            .Select(one => Path.GetFileName(one.File)).ToList();
        files.ShouldBeSubsetOf(missed);
    }

    [Theory]
    [InlineData("x switch { E.A => 1, E.B => 2, _ => 3 }", "`_` answers")]
    [InlineData("x switch { E.A => 1, _ => throw new() }", "does not name B")]
    [InlineData("(x, y) switch { (E.A, true) => 1, (E.B, _) => 2, _ => 3 }", "`_` answers")]
    [InlineData("(x, y) switch { (E.A, _) => 1, (_, true) => 2, _ => throw new() }", "does not name B")]
    [InlineData("x switch { E.A => 1, var other => 2 }", "`var other` answers")]
    public void An_open_end_of_a_switch_is_found(string choice, string what) =>
        Uses($"int F(E x, bool y) => {choice};").OpenSwitches.Select(one => one.What).ShouldContain(one => one.Contains(what));

    [Theory]
    [InlineData("string F(E x) => x == E.A ? \"a\" : \"b\";")]
    [InlineData("string F(E x) => x is E.A or E.B ? Other() : $\"b{x}\";")]
    [InlineData("string F(E x) { if (x == E.A) return \"a\"; if (x == E.B) return \"b\"; return \"\"; }")]
    public void Words_chosen_by_a_comparison_are_found(string member) => Uses(member).WordsByComparison.ShouldNotBeEmpty();

    [Fact]
    public void A_closed_switch_is_in_order() =>
        Uses("int F(E x) => x switch { E.A => 1, E.B => 2, _ => throw new() };").OpenSwitches.ShouldBeEmpty();

    [Fact]
    public void The_build_asks_for_every_member() => File.ReadAllLines(Path.Combine(SourceTree.Root, ".editorconfig"))
        .ShouldContain("dotnet_diagnostic.IDE0072.severity = error");

    [Fact]
    public void A_member_without_a_case_is_named_with_the_place() =>
        Should.Throw<System.Diagnostics.UnreachableException>(() => ((CodeEdition)99).Year)
            .Message.ShouldBe("Year has no case for CodeEdition.99.");

    private static EnumUses Uses(string member) => new([Parsed($"enum E {{ A, B }} class C {{ {member} }}", "C.cs")]);

    private static SyntaxTree Parsed(string text, string path) =>
        CSharpSyntaxTree.ParseText(text, CSharpParseOptions.Default.WithLanguageVersion(LanguageVersion.Latest), path);
}
