using System.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Text;

/// <summary>Reads bytes as UTF-8 and accepts nothing else, so that writing them back loses nothing.</summary>
internal static class Utf8Text
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];

    public static byte[] Encode(string text, bool withMark) =>
        withMark ? [.. Mark, .. Strict.GetBytes(text)] : Strict.GetBytes(text);

    public static string Decode(ReadOnlySpan<byte> bytes, bool withMark)
    {
        RefuseOtherEncodings(bytes);
        var start = withMark ? Mark.Length : 0;
        try
        {
            return Strict.GetString(bytes[start..]);
        }
        catch (DecoderFallbackException broken)
        {
            throw NotUtf8(bytes, start, broken);
        }
    }

    private static void RefuseOtherEncodings(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
            throw new YamlProblem("the file is UTF-16; save it as UTF-8", new(1, 1), 0);
        if (bytes is [0x1F, 0x8B, ..])
            throw new YamlProblem("the file is compressed (gzip), not a text", new(1, 1), 0);
    }

    private static YamlProblem NotUtf8(ReadOnlySpan<byte> bytes, int start, DecoderFallbackException broken)
    {
        var at = Math.Clamp(start + broken.Index, start, bytes.Length - 1);
        var before = Strict.GetString(WholeCharacters(bytes[start..at]));
        return new($"byte 0x{bytes[at]:X2} at offset {at} is not UTF-8; save the file as UTF-8",
            new LineMap(before).PositionOf(before.Length), before.Length);
    }

    private static ReadOnlySpan<byte> WholeCharacters(ReadOnlySpan<byte> bytes)
    {
        while (!System.Text.Unicode.Utf8.IsValid(bytes)) bytes = bytes[..^1];
        return bytes;
    }
}
