using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>Slips of the pen: characters and lines that are dropped, doubled, swapped or replaced.</summary>
internal static class Mutation
{
    private static readonly string[] Scraps =
    [
        "", " ", "\n", "\t", ":", ": ", "- ", "#", "[", "]", "{", "}", ",", "\"", "'", "&a ", "*a", "<<: ", "!x ", "|", ">", "?", "%", "@",
        "20", "A", "0", "-1", "½", "kW", "yes", "~", "null", "all", "1e9", "999999999999999999999999", "---\n", "\r", "  ", "\u00e9",
    ];

    public static string Of(string text, Dice dice)
    {
        for (var left = 1 + dice.Next(4); left > 0; left--) text = One(text, dice);
        return text;
    }

    public static (YamlPath Path, string Text) OfField(Dice dice)
    {
        var field = dice.Any(FieldBook.All);
        var path = field.Path.Split('.').Aggregate(YamlPath.Root, (above, word) => word.EndsWith("[]", StringComparison.Ordinal)
            ? above.Then(word[..^2]).Then(dice.Next(3))
            : above.Then(word));
        return (path, dice.One(3) ? field.Example : Of(field.Example, dice));
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
