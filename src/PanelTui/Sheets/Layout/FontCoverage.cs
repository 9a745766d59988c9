using System.Buffers.Binary;
using System.Collections.Frozen;
using System.Text;

namespace PanelTui.Sheets.Layout;

/// <summary>Which characters a TrueType font has a shape for: its `cmap` table, format 12, as ISO/IEC 14496-22 lays it out.</summary>
internal static class FontCoverage
{
    private const uint CharacterMap = 0x636D6170;
    private const int SegmentedCoverage = 12;

    /// <exception cref="InvalidOperationException">The font has no such table: not one of ours.</exception>
    public static FrozenSet<Rune> Of(ReadOnlySpan<byte> font)
    {
        var map = TableAt(font, CharacterMap);
        for (var record = 0; record < Short(font, map + 2); record++)
        {
            var table = map + Long(font, map + 4 + (8 * record) + 4);
            if (Short(font, table) == SegmentedCoverage) return Characters(font, table);
        }

        throw new InvalidOperationException("The font has no character map of format 12.");
    }

    private static FrozenSet<Rune> Characters(ReadOnlySpan<byte> font, int table)
    {
        var characters = new List<Rune>();
        for (var group = 0; group < Long(font, table + 12); group++)
        {
            var at = table + 16 + (12 * group);
            for (var character = Long(font, at); character <= Long(font, at + 4); character++)
            {
                if (Long(font, at + 8) > 0 && Rune.IsValid(character)) characters.Add(new Rune(character));
            }
        }

        return characters.ToFrozenSet();
    }

    private static int TableAt(ReadOnlySpan<byte> font, uint tag)
    {
        for (var table = 0; table < Short(font, 4); table++)
        {
            var record = 12 + (16 * table);
            if (BinaryPrimitives.ReadUInt32BigEndian(font[record..]) == tag) return Long(font, record + 8);
        }

        throw new InvalidOperationException("The font has no character map.");
    }

    private static int Short(ReadOnlySpan<byte> font, int at) => BinaryPrimitives.ReadUInt16BigEndian(font[at..]);

    private static int Long(ReadOnlySpan<byte> font, int at) => BinaryPrimitives.ReadInt32BigEndian(font[at..]);
}
