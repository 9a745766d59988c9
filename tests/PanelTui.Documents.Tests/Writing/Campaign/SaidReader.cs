using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>
/// Reads what a text says from the parser's events alone: no places, no tokens, none of the program's code.
/// </summary>
internal static class SaidReader
{
    public static Said Read(string text)
    {
        var parser = new Parser(new StringReader(text));
        var root = new Said("", "root", []);
        var open = new Stack<Said>([root]);
        while (parser.MoveNext())
        {
            switch (parser.Current)
            {
                case MappingStart map:
                    Open(open, new(Marks(map), "map", []));
                    break;
                case SequenceStart list:
                    Open(open, new(Marks(list), "list", []));
                    break;
                case MappingEnd or SequenceEnd:
                    open.Pop();
                    break;
                case AnchorAlias alias:
                    open.Peek().Parts.Add(new("", $"*{alias.Value.Value}", []));
                    break;
                case Scalar scalar:
                    open.Peek().Parts.Add(ScalarOf(scalar));
                    break;
            }
        }

        return root.Parts.Count == 0 ? Said.Scalar("", isPlain: true) : root.Parts[0];
    }

    private static void Open(Stack<Said> open, Said said)
    {
        open.Peek().Parts.Add(said);
        open.Push(said);
    }

    private static Said ScalarOf(Scalar scalar) =>
        Said.Scalar(scalar.Value, scalar.Style == ScalarStyle.Plain && scalar.Tag.IsEmpty) with { Marks = Marks(scalar) };

    private static string Marks(NodeEvent read) =>
        (read.Anchor.IsEmpty ? "" : $"&{read.Anchor.Value} ") + (read.Tag.IsEmpty ? "" : $"<{read.Tag}> ");
}
