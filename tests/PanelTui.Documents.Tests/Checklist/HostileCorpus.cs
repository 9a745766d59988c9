using System.IO.Compression;
using System.Text;

namespace PanelTui.Documents.Tests.Checklist;

/// <summary>Files that break careless readers of YAML, each with what must be said of it first.</summary>
internal static class HostileCorpus
{
    private const string LongLine = "1:1: the line is longer than 65,536 characters";
    private const string Deep = "values are nested deeper than 32 levels";
    private const string Conflict = "unresolved merge conflict: the editor opens such a file to settle it; or choose one side and delete the marker lines";
    private const string Laughs = "more than 100,000 values after the aliases are filled in";

    public static readonly (string Item, byte[] File, string Expected)[] Rows =
    [
        .. Of(
            ("[ 100,000 times", Times("[", 100_000), LongLine),
            ("[ 100,000 times on as many lines", Times("[\n", 100_000), $"33:1: {Deep}"),
            ("{a: 20,000 times", Times("{a: ", 20_000), LongLine),
            ("{a: 15,000 times", Times("{a: ", 15_000), $"1:129: {Deep}"),
            ("- 50,000 times", Times("- ", 50_000), LongLine),
            ("- 30,000 times", Times("- ", 30_000), $"1:65: {Deep}"),
            ("? 20,000 times", Times("? ", 20_000), $"1:65: {Deep}"),
            ("3,000 nested mappings", string.Concat(Enumerable.Range(0, 2_000).Select(depth => new string(' ', depth) + "a:\n")), $"33:33: {Deep}"),
            ("a billion laughs", Levels(9, "l", name => $"[{Nine($"*{name}")}]", "lol"), Laughs),
            ("quadratic aliases", $"a: &a [{Times("x, ", 900)}]\nb: [{Times("*a, ", 900)}]\n", Laughs),
            ("merge-key bomb", Levels(9, "m", name => $"{{<<: [{Nine($"*{name}")}]}}", "{x: 1}"), Laughs),
            ("an alias of itself", "a: &a {b: *a}\n", "1:11: the alias *a contains itself"),
            ("more than 1,000 aliases", $"a: &a 1\nb:\n{Times("- *a\n", 1_001)}", "1003:3: more than 1,000 aliases (*name) in one file"),
            ("3 MB scalar", $"a: {Times("x", 3_000_000)}\n", LongLine),
            ("3 MB quoted", $"a: \"{Times("x", 3_000_000)}\"\n", LongLine),
            ("3 MB comment", $"# {Times("x", 3_000_000)}\n", LongLine),
            ("3 MB key", $"{Times("x", 3_000_000)}: 1\n", LongLine),
            ("3 MB blanks", $"a:{Times(" ", 3_000_000)}1\n", LongLine),
            ("a million blank lines", Times("\n", 1_000_000), "1:1: the file holds no schedule; start one with `paneltui new`"),
            ("a million CRs", Times("\r", 1_000_000), "1:1: the file holds no schedule; start one with `paneltui new`"),
            ("100,000 keys", Numbered(100_000, key => $"k{key}: 1\n"), "100000:10: more than 200,000 keys and values in one file"),
            ("100,000 anchors", Numbered(100_000, key => $"k{key}: &a{key} 1\n"), "100000:10: more than 200,000 keys and values in one file"),
            ("50,000 documents", Times("---\na: 1\n", 50_000), "3:1: the file holds more than one YAML document; a schedule is one")),
        .. ":?-!&',".SelectMany(sign => Of(($"{sign} 100,000 times", Times($"{sign}", 100_000), LongLine))),
        .. Characters.SelectMany(one => Of(
            ($"{one.Name} in a value", $"a: {one.Sign}\n", $"1:4: the character {one.Words} is not allowed in a schedule"),
            ($"{one.Name} in a key", $"a{one.Sign}: 1\n", $"1:2: the character {one.Words} is not allowed in a schedule"),
            ($"{one.Name} in a comment", $"# {one.Sign}\n", $"1:3: the character {one.Words} is not allowed in a schedule"))),
        ("0xFF", [(byte)'a', (byte)'\n', 0xFF], "2:1: byte 0xFF at offset 2 is not UTF-8; save the file as UTF-8"),
        ("a cut sequence", [(byte)'a', 0xC3], "1:2: byte 0xC3 at offset 1 is not UTF-8; save the file as UTF-8"),
        ("half of a surrogate pair in bytes", [(byte)'a', 0xED, 0xA0, 0x80], "1:2: byte 0xED at offset 1 is not UTF-8; save the file as UTF-8"),
        ("an overlong NUL", [0xC0, 0x80], "1:1: byte 0xC0 at offset 0 is not UTF-8; save the file as UTF-8"),
        ("Latin-1", Encoding.Latin1.GetBytes("name: Küche\n"), "1:8: byte 0xFC at offset 7 is not UTF-8; save the file as UTF-8"),
        ("UTF-16", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("a: 1\n")).ToArray(), "1:1: the file is UTF-16; save it as UTF-8"),
        ("gzip", Compressed("a: 1\n"), "1:1: the file is compressed (gzip), not a text"),
        .. Of(
            ("tab indentation", "a:\n\tb: 1\n", "2:1: a tab indents this line; YAML is indented with spaces"),
            ("unclosed [", "a: [1, 2\nb: 1\n", "1:4: the '[' here is not closed before line 2"),
            ("unclosed {", "a: {b: 1\nc: 2\n", "1:4: the '{' here is not closed before line 2"),
            ("unclosed '", "a: 'x\n", "1:4: the quote that opens here is never closed"),
            ("unclosed \"", "a: \"x\nb: 2\n", "1:4: the text in quotes goes on in a line that is not indented"),
            ("extra ]", "a: 1\n]\n", "2:1: this line fits no key above it; check its indentation and quotes"),
            ("bad escape", "a: \"\\q\"\n", "1:4: after a backslash in double quotes this letter has no meaning; write \\\\ for a backslash"),
            ("wrong dedent", "a:\n    b: 1\n  c: 2\n", "3:3: this line fits no key above it; check its indentation and quotes"),
            ("conflict markers", "a: 1\n<<<<<<< ours\nb: 1\n=======\nb: 2\n>>>>>>> theirs\n", $"2:1: {Conflict}"),
            ("unknown alias", "a: *no\n", "1:4: *no repeats a value marked &no, but there is none above it"),
            ("duplicate key", "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 8}\nschedule: 1\n", "3:1: the key \"schedule\" stands here and in line 1; keep one of them"),
            ("!System.IO.FileInfo", Named("!System.IO.FileInfo x"), "opens"),
            ("!!python/object", Named("!!python/object/apply:os.system [ls]"), "2:47: name is a list; it must be text"),
            ("unknown tag", Named("!mine x"), "opens"),
            ("{a: &x 1, b: 2}", "{a: &x 1, b: 2}\n", "1:5: a value marked &x inside braces is YAML, but cannot be read here; write this mapping without braces, each key on a line of its own"),
            ("escape sequence, raw", "a: \u001b]52;c;eA==\u0007\n", "1:4: the character U+001B (escape) is not allowed in a schedule"),
            ("escape sequence, written out", Named("\"\\e]52;c;eA==\\a\""), "2:15: name has the control character U+001B in it; in double quotes a backslash is written twice")),
    ];

    private static (string Name, string Sign, string Words)[] Characters =>
    [
        ("NUL", "\0", "U+0000 (NUL)"), ("other C0", "\u0001", "U+0001 (a control character)"), ("DEL", "\u007f", "U+007F (delete)"),
        ("C1", "\u009b", "U+009B (a control character)"), ("U+0085", "\u0085", "U+0085 (next line)"), ("U+2028", "\u2028", "U+2028 (line separator)"),
        ("U+2029", "\u2029", "U+2029 (paragraph separator)"), ("U+FFFE", "\uFFFE", "U+FFFE (not a character)"),
        ("inner BOM", "\uFEFF", "U+FEFF (byte order mark inside the text)"),
    ];

    private static IEnumerable<(string Item, byte[] File, string Expected)> Of(params (string Item, string Text, string Expected)[] rows) =>
        rows.Select(row => (row.Item, Encoding.UTF8.GetBytes(row.Text), row.Expected));

    private static string Named(string name) => $"schedule: 1\npanel: {{name: {name}, system: 120/240 V 1ph 3W, spaces: 8}}\ncircuits: []\n";

    private static string Times(string text, int count) => new StringBuilder(text.Length * count).Insert(0, text, count).ToString();

    private static string Numbered(int count, Func<int, string> line) => string.Concat(Enumerable.Range(1, count).Select(line));

    private static string Nine(string text) => string.Join(", ", Enumerable.Repeat(text, 9));

    private static string Levels(int count, string name, Func<string, string> level, string first) =>
        $"{name}0: &{name}0 {first}\n" + Numbered(count, at => $"{name}{at}: &{name}{at} {level($"{name}{at - 1}")}\n");

    private static byte[] Compressed(string text)
    {
        using var bytes = new MemoryStream();
        using (var gzip = new GZipStream(bytes, CompressionLevel.Fastest)) gzip.Write(Encoding.UTF8.GetBytes(text));
        return bytes.ToArray();
    }
}
