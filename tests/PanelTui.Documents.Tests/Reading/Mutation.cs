using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>Slips of the pen: characters and lines that are dropped, doubled, swapped or replaced.</summary>
internal static class Mutation
{
    private static readonly string[] Scraps =
    [
        "", " ", "\n", "\t", ":", ": ", "- ", "#", "[", "]", "{", "}", ",", "\"", "'", "&a ", "*a", "<<: ", "!x ", "|",
        ">", "?", "%", "@",
        "20", "A", "0", "-1", "½", "kW", "yes", "~", "null", "all", "1e9", "999999999999999999999999",
        "---\n", "\r", "  ", "\u00e9",
    ];

    private static readonly string[] Values =
    [
        "20", "20 A", "0 A", "-5 A", "1.5 kW", "480 VA", "3 hp", "1/3 hp", "240 V",
        "60 ft", "18 m", "35 %", "120 %", "6x", "code G", "code O",
        "4.2", "yes", "NO", "maybe", "all", "~", "", "[]", "{}", "[1, 2]",
        "{a: 1}", "5", "17a", "252", "253", "0", "3", "sort-lights", "pump",
        "motor", "lighting", "receptacle", "spilt", "6 AWG Cu", "6 AWG", "2026-02-30",
        "14-50", "99999999999999999999", "1e9 W", "1,500 W", "1½ hp",
    ];

    public static string Of(string text, Dice dice)
    {
        for (var left = 1 + dice.Next(2); left > 0; left--) text = dice.One(2)
            ? One(text, dice)
            : WithValueChanged(text, dice);
        return text;
    }

    /// <summary>
    /// What stands after a colon up to the next comma, brace or end of line gives way to another value.
    /// </summary>
    private static string WithValueChanged(string text, Dice dice)
    {
        if (text.Length == 0) return text;
        var colon = text.IndexOf(": ", dice.Next(text.Length), StringComparison.Ordinal);
        if (colon < 0) return text;
        var end = text.AsSpan(colon + 2).IndexOfAny(",}]\n");
        return end < 0 ? text : text.Remove(colon + 2, end).Insert(colon + 2, dice.Any(Values));
    }

    public static (YamlPath Path, string Text) OfField(Dice dice)
    {
        var field = dice.Any(FieldBook.All);
        var path = field.Path.Split('.').Aggregate(
            YamlPath.Root,
            (above, word) => word.EndsWith("[]", StringComparison.Ordinal)
                ? above.Then(word[..^2]).Then(dice.Next(3))
                : above.Then(word));
        return (path, dice.One(3) ? field.Example : dice.One(2) ? dice.Any(Values) : Of(field.Example + " ", dice));
    }

    private static string One(string text, Dice dice)
    {
        var at = dice.Next(text.Length + 1);
        var length = Math.Min(dice.Next(12), text.Length - at);
        return dice.Next(4) switch
        {
            0 => text.Remove(at, length),
            1 => text.Insert(at, text.Substring(at, length)),
            2 => text.Remove(at, length).Insert(at, dice.Any(Scraps)),
            _ => WithLineMoved(text, dice),
        };
    }

    private static string WithLineMoved(string text, Dice dice)
    {
        var lines = text.Split('\n').ToList();
        var line = dice.Any(lines);
        lines.Remove(line);
        lines.Insert(dice.Next(lines.Count + 1), line);
        return string.Join('\n', lines);
    }
}
