using System.Text;
using CsCheck;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Text;

public class SourceTextTests
{
    private static readonly string[] Pieces = ["a", "\n", "\r", "\r\n", "ü", "😀", "\t"];

    private static readonly Gen<string> Texts = Gen.Int[0, 6].Select(index => Pieces[index]).Array[0, 30].Select(string.Concat);

    [Fact]
    public void Bytes_come_back_as_they_were() => Gen.Select(Texts, Gen.Bool).Sample((text, hasBom) =>
    {
        byte[] bytes = [.. hasBom ? new byte[] { 0xEF, 0xBB, 0xBF } : [], .. Encoding.UTF8.GetBytes(text)];
        var source = SourceText.FromBytes(bytes);
        return source.HasBom == hasBom && source.Text == text && source.ToBytes().SequenceEqual(bytes);
    });

    [Fact]
    public void The_lines_with_their_breaks_make_up_the_text() => Texts.Sample(text =>
    {
        var source = SourceText.FromString(text);
        var lines = Enumerable.Range(1, source.LineCount).Select(line => source.Slice(source.LineSpan(line)) + source.Lines.BreakOf(line));
        return string.Concat(lines) == text;
    });

    [Theory]
    [InlineData("a\r\nb\rc\nd", 0, 1, 1)]
    [InlineData("a\r\nb\rc\nd", 2, 1, 3)]
    [InlineData("a\r\nb\rc\nd", 3, 2, 1)]
    [InlineData("a\r\nb\rc\nd", 5, 3, 1)]
    [InlineData("a\r\nb\rc\nd", 8, 4, 2)]
    [InlineData("a\n", 2, 2, 1)]
    [InlineData("😀x", 2, 1, 3)]
    public void A_place_is_a_line_and_a_column_from_one(string text, int offset, int line, int column) =>
        SourceText.FromString(text).PositionOf(offset).ShouldBe(new(line, column));

    [Theory]
    [InlineData("", "\n")]
    [InlineData("a", "\n")]
    [InlineData("a\r\nb\n", "\r\n")]
    [InlineData("a\rb\n", "\r")]
    public void New_lines_end_as_the_first_one_does(string text, string expected) =>
        SourceText.FromString(text).NewLine.ShouldBe(expected);

    [Theory]
    [InlineData(new byte[] { 0x61, 0x0A, 0xFF }, "2:1: byte 0xFF at offset 2 is not UTF-8; save the file as UTF-8")]
    [InlineData(new byte[] { 0x61, 0xC3 }, "1:2: byte 0xC3 at offset 1 is not UTF-8; save the file as UTF-8")]
    [InlineData(new byte[] { 0xC3, 0xBC, 0xED, 0xA0, 0x80 }, "1:2: byte 0xED at offset 2 is not UTF-8; save the file as UTF-8")]
    [InlineData(new byte[] { 0xC0, 0x80 }, "1:1: byte 0xC0 at offset 0 is not UTF-8; save the file as UTF-8")]
    [InlineData(new byte[] { 0x4B, 0xFC, 0x63 }, "1:2: byte 0xFC at offset 1 is not UTF-8; save the file as UTF-8")]
    [InlineData(new byte[] { 0xFF, 0xFE, 0x61, 0x00 }, "1:1: the file is UTF-16; save it as UTF-8")]
    [InlineData(new byte[] { 0xFE, 0xFF, 0x00, 0x61 }, "1:1: the file is UTF-16; save it as UTF-8")]
    [InlineData(new byte[] { 0x1F, 0x8B, 0x08 }, "1:1: the file is compressed (gzip), not a text")]
    [InlineData(new byte[] { 0xEF, 0xBB, 0xBF, 0x61, 0xFF }, "1:2: byte 0xFF at offset 4 is not UTF-8; save the file as UTF-8")]
    public void What_is_not_utf_8_is_refused_with_its_place(byte[] bytes, string expected) =>
        Sentence(() => SourceText.FromBytes(bytes)).ShouldBe(expected);

    [Theory]
    [InlineData("a: \0", "1:4: the character U+0000 (NUL) is not allowed in a schedule")]
    [InlineData("a\u0001: b", "1:2: the character U+0001 (a control character) is not allowed in a schedule")]
    [InlineData("# \u001b[2J", "1:3: the character U+001B (escape) is not allowed in a schedule")]
    [InlineData("a: \u007f", "1:4: the character U+007F (delete) is not allowed in a schedule")]
    [InlineData("a: \u0085b: 1", "1:4: the character U+0085 (next line) is not allowed in a schedule")]
    [InlineData("a: \u009b", "1:4: the character U+009B (a control character) is not allowed in a schedule")]
    [InlineData("# x\u2028b: 1", "1:4: the character U+2028 (line separator) is not allowed in a schedule")]
    [InlineData("a\n\u2029", "2:1: the character U+2029 (paragraph separator) is not allowed in a schedule")]
    [InlineData("a: \uFEFFb", "1:4: the character U+FEFF (byte order mark inside the text) is not allowed in a schedule")]
    [InlineData("a: \uFFFE", "1:4: the character U+FFFE (not a character) is not allowed in a schedule")]
    [InlineData("a\f", "1:2: the character U+000C (a control character) is not allowed in a schedule")]
    public void Characters_that_yaml_forbids_are_refused_with_their_place(string text, string expected) =>
        Sentence(() => SourceText.FromString(text)).ShouldBe(expected);

    [Fact]
    public void Half_a_surrogate_pair_is_refused() =>
        Sentence(() => SourceText.FromString("a: " + '\uD83D')).ShouldBe("1:4: half of a surrogate pair (U+D83D) is not a character");

    [Fact]
    public void A_line_longer_than_anyone_writes_is_refused() =>
        Sentence(() => SourceText.FromString("a: 1\nb: " + new string('x', TextLimits.LineLength))).ShouldBe("2:1: the line is longer than 65,536 characters");

    [Fact]
    public void A_file_larger_than_any_schedule_is_refused() =>
        Sentence(() => SourceText.FromBytes(new byte[TextLimits.Bytes + 1])).ShouldBe("1:1: the file is larger than 4 MiB");

    private static string Sentence(Action read)
    {
        var problem = Should.Throw<YamlProblem>(read);
        return $"{problem.Position}: {problem.Message}";
    }
}
