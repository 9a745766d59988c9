namespace PanelTui.Documents.Tests.Checklist;

/// <summary>The checklist of tricky cases for whoever edits YAML as text: every item of it, tried from bytes to bytes.</summary>
public class TrickyCaseTests
{
    private const string Bom = "\uFEFF";

    /// <summary>Which item, a file, an edit as <see cref="Trial"/> reads it, and the file or the sentence that must come of it.</summary>
    private static readonly (string Item, string File, string Edit, string Expected)[] Rows =
    [
        .. TrickyBytes.Rows, .. TrickyScalars.Rows, .. TrickyCollections.Rows, .. TrickyReferences.Rows,
    ];

    private static readonly string[] Bytes =
    [
        "BOM kept", "BOM in the middle", "CRLF", "CR", "mixed line ends", "no final newline", "blank last lines", "trailing blanks", "non-BMP text",
        "tab after :", "tab before #",
    ];

    private static readonly string[] Scalars =
    [
        "empty value with comment", "empty value", "key :", "quoted keys", "'it''s'", "escapes", "multi-line plain", "multi-line single", "multi-line double",
        "|", "|-", "|+", ">", "|2", "header comment", "blank lines after a block text", "white-space-only last line longer than the indentation",
        "block text at the end without newline", "# not a comment", "value with #", "value with : ", "leading -", "leading ?", "leading @", "leading %",
        "quotes", "inch marks", "degree sign", "CJK", "N", "Y", "on", "010", "12:30", "1e3", "~", "new value with line break", "new value with tab",
        "new value with control character", "new value with half a surrogate",
    ];

    private static readonly string[] Maps =
    [
        "insert first", "insert middle", "insert last", "insert into {}", "insert into flow with trailing comma", "insert after |+",
        "remove first on the - line", "remove first on the - line with comment", "remove first on the - line with comment lines below", "remove last remaining",
        "remove first from flow", "remove middle from flow", "remove last from flow", "key already there", "? keys", "duplicate keys",
    ];

    private static readonly string[] Lists =
    [
        "indented", "not indented", "wide -", "- alone with map below", "- - a", "comments above first", "comments above any", "comments deeper below",
        "comments at column 0", "comments apart by a blank line", "insert into [] with comment", "insert into empty value", "remove only one",
        "flow on one line",
        "flow on several lines with comments", "list at the end followed by comments",
    ];

    private static readonly string[] References =
    [
        "anchor on scalar", "anchor on map", "anchor on list", "anchor on empty", "alias as value", "alias as key", "alias as item", "<< with one",
        "<< with several", "remove anchor in use", "set anchored value", "alias cycle",
    ];

    private static readonly string[] Document =
        ["%YAML", "--- with comment", "...", "second document", "only comments", "empty", "list at the top", "scalar at the top"];

    private static readonly string[] All = [.. Bytes, .. Scalars, .. Maps, .. Lists, .. References, .. Document];

    public static TheoryData<string> Items => [.. All];

    [Theory]
    [MemberData(nameof(Items))]
    public void A_tricky_case_is_edited_as_meant_or_refused_with_a_reason(string item)
    {
        var rows = Rows.Where(row => row.Item == item).ToArray();
        rows.ShouldNotBeEmpty();
        foreach (var row in rows) Trial.Of(row.File, row.Edit).ShouldBe(row.Expected, $"{row.Edit} on\n{row.File}");
    }

    [Fact]
    public void No_item_of_the_checklist_is_missed()
    {
        (Bytes.Length, Scalars.Length, Maps.Length, Lists.Length, References.Length, Document.Length).ShouldBe((11, 40, 16, 16, 12, 8));
        All.ShouldBeUnique();
        Rows.Select(row => row.Item).Distinct().ShouldBe(All, ignoreOrder: true);
    }

    [Fact]
    public void A_file_that_opens_is_saved_as_it_was() => Rows.AtLeastOne().ShouldAllBe(row =>
        Trial.Of(row.File, "open") != "opens" || Trial.Of(row.File, "keep") == row.File);

    internal static class TrickyBytes
    {
        public static readonly (string, string, string, string)[] Rows =
        [
            ("BOM kept", $"{Bom}a: 1\n", "set /a 2", $"{Bom}a: 2\n"),
            ("BOM kept", $"{Bom}- a\n- b\n", "drop / 0", $"{Bom}- b\n"),
            ("BOM in the middle", $"a: {Bom}1\n", "open", "1:4: the character U+FEFF (byte order mark inside the text) is not allowed in a schedule"),
            ("CRLF", "a: 1\r\nb: 2\r\n", "set /a 3", "a: 3\r\nb: 2\r\n"),
            ("CRLF", "a: 1\r\n", "add / b x", "a: 1\r\nb: x\r\n"),
            ("CR", "a: 1\rb: 2\r", "add / c x after a", "a: 1\rc: x\rb: 2\r"),
            ("mixed line ends", "a: 1\r\nb: 2\nc: 3\r", "add / w x after b", "a: 1\r\nb: 2\nw: x\nc: 3\r"),
            ("mixed line ends", "a: 1\r\nb: 2\nc: 3\r", "clear /b", "a: 1\r\nc: 3\r"),
            ("no final newline", "a: 1", "set /a 2", "a: 2"),
            ("no final newline", "a: 1", "add / b x", "a: 1\nb: x"),
            ("no final newline", "a: 1", "add-first / b x", "b: x\na: 1"),
            ("no final newline", "a: 1\nb: 2", "clear /b", "a: 1"),
            ("no final newline", "- a\n- b", "insert / 2 x", "- a\n- b\n- x"),
            ("no final newline", "- a\n- b", "drop / 1", "- a"),
            ("blank last lines", "a: 1\n\n  \n", "set /a 2", "a: 2\n\n  \n"),
            ("blank last lines", "a: 1\n\n  \n", "add / b x", "a: 1\nb: x\n\n  \n"),
            ("trailing blanks", "a: 1  \nb: 2\t\n", "set /b 3", "a: 1  \nb: 3\t\n"),
            ("trailing blanks", "a: 1  \nb: 2\t\n", "clear /a", "b: 2\t\n"),
            ("non-BMP text", "w: 😀😀\na: 1 # 😀\n", "set /a 2", "w: 😀😀\na: 2 # 😀\n"),
            ("tab after :", "a:\t1\n", "set /a 2", "a:\t2\n"),
            ("tab before #", "a: 1\t# c\n", "set /a 2", "a: 2\t# c\n"),
            ("tab before #", "a: 1\t# c\nb: 2\n", "clear /b", "a: 1\t# c\n"),
        ];
    }
}
