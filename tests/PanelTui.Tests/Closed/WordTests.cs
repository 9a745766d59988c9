using System.Reflection;
using PanelTui.Documents;
using PanelTui.Engine;

namespace PanelTui.Tests.Closed;

/// <summary>Each enum that is shown or written has one table of words, and each member has its row there.</summary>
public class WordTests
{
    /// <summary>Each table with one of its columns and the enum that it is about.</summary>
    public static TheoryData<string, string> Columns
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var column in All) rows.Add(column.DeclaringType!.Name, column.Name);
            return rows;
        }
    }

    private static IEnumerable<MethodInfo> All =>
        from assembly in new[] { typeof(Assessment).Assembly, typeof(Snapshot).Assembly, typeof(Session).Assembly }
        from type in assembly.GetTypes()
        from method in type.GetMethods(BindingFlags.Static | BindingFlags.Public)
        where method.Name.StartsWith("get_", StringComparison.Ordinal)
        where method.GetParameters() is [{ ParameterType.IsEnum: true } only] && only.ParameterType.Assembly == assembly
        select method;

    [Fact]
    public void The_choices_of_the_file_have_words() => All.Where(column => column.Name == "get_Word")
        .Select(column => column.GetParameters()[0].ParameterType.Name)
        .ShouldBe(
            [
                "Across", "ChangeKind", "ChargingFrom", "CodeEdition", "ColourDepth", "Conduit", "DemandMethodName", "LoadKind",
                "NeutralBonds", "Occupancy", "Protection", "Severity", "SourceArrangement", "SourceKind", "SourceNeutral",
                "SourceStanding", "TransferKind",
            ],
            ignoreOrder: true);

    [Theory, MemberData(nameof(Columns))]
    public void Each_member_has_a_word_of_its_own(string table, string column)
    {
        var words = WordsOf(Column(table, column)).ToList();
        words.ShouldNotBeEmpty();
        words.ShouldBeUnique();
    }

    [Theory, MemberData(nameof(Columns))]
    public void A_member_without_a_row_is_an_error(string table, string column)
    {
        var (method, type) = (Column(table, column), Column(table, column).GetParameters()[0].ParameterType);
        Should.Throw<TargetInvocationException>(() => method.Invoke(null, [Enum.ToObject(type, 99)]))
            .InnerException.ShouldBeOfType<System.Diagnostics.UnreachableException>();
    }

    /// <summary>One enum, one table: no second class has words for it.</summary>
    [Fact]
    public void No_enum_has_two_tables() => All
        .GroupBy(column => column.GetParameters()[0].ParameterType)
        .Where(columns => columns.Select(column => column.DeclaringType).Distinct().Count() > 1)
        .Select(columns => columns.Key.Name).ShouldBeEmpty();

    private static MethodInfo Column(string table, string name) =>
        All.Single(column => column.DeclaringType!.Name == table && column.Name == name);

    private static IEnumerable<object?> WordsOf(MethodInfo column) =>
        Enum.GetValues(column.GetParameters()[0].ParameterType).Cast<object>().Select(member => column.Invoke(null, [member]));
}
