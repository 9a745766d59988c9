using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>One random edit: how the program makes it, and what the text should say afterwards.</summary>
internal sealed record RandomEdit(string Name, YamlNode Target, Func<YamlTree, TextChange> Make, Action<Said> Intend)
{
    public bool IsRemoval => Name.StartsWith("remove", StringComparison.Ordinal);

    public bool IsSet => Name.StartsWith("set", StringComparison.Ordinal);

    private static readonly string[] Texts =
    [
        "x", "Well pump", "20 A", "N", "on", "010", "12:30", "1e3", "~", "", " lead", "trail ", "a: b", "a #b", "#x", "- x", "? x", "@x", "%x", "it's",
        "say \"x\"", "C:\\x", "3/4\"", "Küche 😀", "a\nb", "a\n\nb\n", "tab\there", "\u001b[2J", "[x", "a, b", "{", "&a", "*a", "!t", "|", ">", "---", "...", "null", "2026-11-25", "1_000", ":", "-",
    ];

    private static readonly string[] Bare = ["20 A", "5", "1.5", "no", "true", "240 V", "6x", "-3", "[x", "a: b"];

    public static RandomEdit? Of(Dice dice, YamlTree tree)
    {
        var nodes = Reachable(tree.Root).ToArray();
        var target = dice.Any(nodes);
        var path = Trees.PathTo(target);
        return target.Kind switch
        {
            YamlKind.Scalar => Set(dice, target, path),
            YamlKind.Mapping when dice.Next(3) > 0 => InsertEntry(dice, target, path),
            YamlKind.Mapping => RemoveEntry(dice, target, path),
            YamlKind.Sequence => OnList(dice, target, path),
            _ => null,
        };
    }

    private static RandomEdit Set(Dice dice, YamlNode target, YamlPath path)
    {
        var value = Scalar(dice);
        return new($"set {path} to {value}", target, tree => YamlEditor.SetScalar(tree, path, value), said =>
            Replace(said, path, SaidOf(value) with { Marks = At(said, path).Marks }));
    }

    private static RandomEdit InsertEntry(Dice dice, YamlNode target, YamlPath path)
    {
        var index = dice.Next(target.Pairs.Length + 1);
        var key = dice.Any(["new", "on", "a b", "12"]) + dice.Next(1000);
        var value = Any(dice, 0);
        return new($"insert {key} into {path} at {index}: {value}", target, tree => YamlEditor.InsertEntryAt(tree, path, index, key, value), said =>
            At(said, path).Parts.InsertRange(index * 2, [Said.Scalar(key, isPlain: false), SaidOf(value)]));
    }

    private static RandomEdit? RemoveEntry(Dice dice, YamlNode target, YamlPath path)
    {
        if (target.Pairs.IsEmpty) return null;
        var index = dice.Next(target.Pairs.Length);
        var key = target.Pairs[index].Key.Value;
        return new($"remove {key} from {path}", target, tree => YamlEditor.RemoveEntry(tree, path.Then(key)), said =>
            At(said, path).Parts.RemoveRange(index * 2, 2));
    }

    private static RandomEdit? OnList(Dice dice, YamlNode target, YamlPath path)
    {
        var count = target.Items.Length;
        var index = dice.Next(count + 1);
        var value = Any(dice, 0);
        if (count == 0 || dice.One(3))
        {
            return new($"insert into {path} at {index}: {value}", target, tree => YamlEditor.InsertItem(tree, path, index, value), said =>
                At(said, path).Parts.Insert(index, SaidOf(value)));
        }

        var from = dice.Next(count);
        return new($"remove {from} from {path}", target, tree => YamlEditor.RemoveItem(tree, path, from), said =>
            At(said, path).Parts.RemoveAt(from));
    }

    private static NewNode Any(Dice dice, int depth) => dice.Next(depth < 2 ? 6 : 4) switch
    {
        4 => new NewMapping(
            [.. Enumerable.Range(0, dice.Next(4)).Select(i => new NewEntry($"k{i}", Any(dice, depth + 1)))],
            (CollectionStyle)dice.Next(3)),
        5 => new NewSequence([.. Enumerable.Range(0, dice.Next(4)).Select(_ => Any(dice, depth + 1))], (CollectionStyle)dice.Next(3)),
        _ => Scalar(dice),
    };

    private static NewScalar Scalar(Dice dice) => dice.One(3)
        ? new(dice.Any(Bare), ScalarKind.Plain)
        : new(dice.Any(Texts), ScalarKind.Text);

    private static Said SaidOf(NewNode node) => node switch
    {
        NewScalar scalar => Said.Scalar(scalar.Text, scalar.Kind == ScalarKind.Plain),
        NewSequence list => new("", "list", [.. list.Items.Select(SaidOf)]),
        _ => new("", "map", [.. ((NewMapping)node).Entries.SelectMany(entry => new[] { Said.Scalar(entry.Key, isPlain: false), SaidOf(entry.Value) })]),
    };

    private static IEnumerable<YamlNode> Reachable(YamlNode? node) => node is null ? [] :
        node.Items.Select(item => item.Value).Concat(node.Pairs.Where(pair => pair.Key.IsScalar).Select(pair => pair.Value))
            .SelectMany(Reachable).Prepend(node);

    private static Said At(Said said, YamlPath path) =>
        path.Steps.Aggregate(said, (at, step) => at.Parts[IndexOf(at, step)]);

    private static void Replace(Said said, YamlPath path, Said by)
    {
        if (path.IsRoot) throw new InvalidOperationException("a whole file is not replaced");
        var parent = At(said, path.Parent);
        parent.Parts[IndexOf(parent, path.Last)] = by;
    }

    private static int IndexOf(Said said, YamlStep step)
    {
        if (step.Index is { } index) return index;
        for (var at = 0; at < said.Parts.Count; at += 2)
        {
            if (said.Parts[at].What.EndsWith($" {step.Key}", StringComparison.Ordinal)) return at + 1;
        }

        throw new InvalidOperationException($"no {step} in {said}");
    }
}
