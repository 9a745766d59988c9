using System.Text;

namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>
/// Writes random YAML as people and tools write it: every style of scalar and collection, comments and blank lines in odd
/// places, anchors, aliases, tags, mixed indentation. The same seed gives the same text.
/// </summary>
internal sealed class RandomYaml(Dice dice)
{
    private static readonly string[] Words =
        ["Spare", "20 A", "1.5 kW", "Well pump", "5", "-3", "0x1F", "yes", "no", "~", "3/4\"", "it's", "a:b", "Küche", "😀 pump", "12:30", "a#b", "1e3", "x-y", "null"];

    private static readonly string[] Remarks = ["# c", "#", "# note: x", "#- a", "# 'quoted", "#\ttab", "# 😀"];

    private readonly StringBuilder _text = new();
    private readonly List<string> _anchors = [];
    private int _keys;

    public static string Of(int seed) => new RandomYaml(new Dice(seed)).Document();

    private string Document()
    {
        if (dice.One(12)) _text.Append(dice.One(2) ? "%YAML 1.2\n---\n" : dice.One(2) ? "--- # start\n" : "---\n");
        Trivia(0);
        if (dice.One(6)) BlockList(0, 0);
        else BlockMap(0, 0, isInline: false);
        Trivia(0);
        if (dice.One(20)) _text.Append("...\n");
        return Broken(dice.One(8) ? _text.ToString().TrimEnd('\n') : _text.ToString());
    }

    private string Broken(string text) => dice.Next(12) switch
    {
        0 => text.Replace("\n", "\r\n", StringComparison.Ordinal),
        1 => text.Replace("\n", "\r", StringComparison.Ordinal),
        2 => string.Concat(text.Split('\n').SelectMany((line, i) => new[] { i == 0 ? "" : dice.One(2) ? "\n" : "\r\n", line })),
        _ => text,
    };

    private void BlockMap(int column, int depth, bool isInline)
    {
        for (var left = dice.Next(1, 5); left > 0; left--)
        {
            if (!isInline)
            {
                Trivia(column);
                Indent(column);
            }

            isInline = false;
            if (dice.One(25)) _text.Append("? ").Append(Key()).Append('\n').Append(' ', column).Append(':');
            else _text.Append(Key()).Append(dice.One(15) ? " :" : ":");
            Value(column, depth, isInList: false);
        }
    }

    private void BlockList(int column, int depth)
    {
        for (var left = dice.Next(1, 5); left > 0; left--)
        {
            Trivia(column);
            Indent(column);
            Item(column, depth);
        }
    }

    private void Item(int column, int depth)
    {
        var gap = dice.One(6) ? dice.Next(2, 4) : 1;
        _text.Append('-');
        if (depth < 4 && dice.One(2))
        {
            _text.Append(' ', gap);
            BlockMap(column + 1 + gap, depth + 1, isInline: true);
        }
        else if (depth < 4 && dice.One(15))
        {
            _text.Append(' ', gap);
            var inner = column + 1 + gap;
            Item(inner, depth + 1);
        }
        else
        {
            Value(column, depth, isInList: true);
        }
    }

    private void Value(int column, int depth, bool isInList)
    {
        var kind = dice.Next(depth < 4 ? 14 : 10);
        if (kind >= 12) Nested(column, depth, isInList);
        else if (kind >= 10) NestedMap(column, depth);
        else if (kind == 9) Flow(column);
        else if (kind == 8) Lines(column);
        else if (kind == 7) _text.Append($" {Properties()}".TrimEnd()).Append(LineEnd());
        else if (kind == 6 && _anchors.Count > 0) _text.Append(" *").Append(dice.Any(_anchors)).Append(LineEnd());
        else _text.Append(' ').Append(Properties()).Append(Scalar(column)).Append(LineEnd());
    }

    private void NestedMap(int column, int depth)
    {
        _text.Append(dice.One(8) ? $" {Properties()}".TrimEnd() : "").Append(LineEnd());
        BlockMap(column + dice.Next(1, 5), depth + 1, isInline: false);
    }

    private void Nested(int column, int depth, bool isInList)
    {
        _text.Append(LineEnd());
        BlockList(column + (isInList ? dice.Next(1, 4) : dice.Next(0, 4)), depth + 1);
    }

    private void Lines(int column)
    {
        var body = column + dice.Next(1, 4);
        var chomp = dice.Any(["", "-", "+", ""]);
        _text.Append(' ').Append(dice.One(2) ? '|' : '>').Append(chomp).Append(dice.One(5) ? " # head" : "").Append('\n');
        for (var left = dice.Next(1, 4); left > 0; left--)
            _text.Append(' ', body).Append(dice.Any(Words)).Append(dice.One(6) ? " # not a comment" : "").Append(dice.One(6) ? "\n\n" : "\n");
        if (dice.One(6)) _text.Append(' ', body + 1).Append('\n');
        if (dice.One(4)) _text.Append('\n');
    }

    private void Flow(int column)
    {
        _text.Append(' ').Append(dice.One(10) ? Properties() : "");
        FlowCollection(column + 1, 0, isSpread: dice.One(3));
        _text.Append(LineEnd());
    }

    private void FlowCollection(int column, int depth, bool isSpread)
    {
        var isMap = dice.One(2);
        _text.Append(isMap ? '{' : '[').Append(dice.One(4) ? " " : "");
        var count = dice.Next(0, 4);
        for (var i = 0; i < count; i++)
        {
            if (isSpread) FlowBreak(column + 1);
            if (isMap) _text.Append(Key()).Append(": ");
            else if (dice.One(12)) _text.Append(Key()).Append(": ");
            if (depth < 2 && dice.One(5)) FlowCollection(column + 1, depth + 1, isSpread && dice.One(2));
            else _text.Append(FlowScalar());
            if (i < count - 1 || dice.One(6)) _text.Append(dice.One(8) ? " ," : ",").Append(isSpread ? "" : " ");
        }

        if (isSpread) FlowBreak(column);
        _text.Append(isMap ? '}' : ']');
    }

    private void FlowBreak(int column) => _text.Append(dice.One(4) ? " " + dice.Any(Remarks) : "").Append('\n').Append(' ', column);

    private string FlowScalar() => dice.Next(5) switch
    {
        0 => $"'{dice.Any(["a, b", "it''s", "x # y"])}'",
        1 => $"\"{dice.Any(["a]b", "\\t", "{", "say \\\"x\\\""])}\"",
        _ => dice.Any(["a", "20 A", "5", "no", "x y", "1.5", "Küche"]),
    };

    private string Scalar(int column) => dice.Next(9) switch
    {
        0 => $"'{dice.Any(["it''s", "", "a # b", "yes", "x: y", " lead"])}'",
        1 => $"\"{dice.Any(["a\\nb", "", "C:\\\\x", "\\u00e9", "say \\\"x\\\"", "\\e[0m"])}\"",
        2 => $"first\n{new string(' ', column + 1 + dice.Next(3))}second",
        3 => $"'one\n\n{new string(' ', column + 1 + dice.Next(3))}two'",
        4 => $"\"one \\\n{new string(' ', column + 1 + dice.Next(3))}two\"",
        _ => dice.Any(Words),
    };

    private string Properties()
    {
        if (dice.One(12)) return "!!str ";
        if (!dice.One(10)) return "";
        _anchors.Add($"a{_anchors.Count}");
        return $"&{_anchors[^1]} ";
    }

    private string Key()
    {
        var name = $"{dice.Any(["key", "name", "space", "größe", "a b", "on"])}{_keys++}";
        return dice.Next(10) switch
        {
            0 => $"'{name}'",
            1 => $"\"{name}\"",
            _ => name,
        };
    }

    private string LineEnd() =>
        dice.Next(8) switch
        {
            0 => $"{new string(' ', dice.Next(1, 5))}{dice.Any(Remarks)}\n",
            1 => dice.One(4) ? "\t\n" : "  \n",
            _ => "\n",
        };

    private void Trivia(int column)
    {
        if (dice.One(6)) _text.Append(dice.One(4) ? "  \n" : "\n");
        if (dice.One(7)) _text.Append(' ', dice.Next(4) switch { 0 => 0, 1 => column + 2, _ => column }).Append(dice.Any(Remarks)).Append('\n');
        if (dice.One(16)) _text.Append(' ', column).Append(dice.Any(Remarks)).Append('\n');
        if (dice.One(14)) _text.Append('\n');
    }

    private void Indent(int column) => _text.Append(' ', column);
}
