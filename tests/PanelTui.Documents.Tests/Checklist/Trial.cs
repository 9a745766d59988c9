using System.Text;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Checklist;

/// <summary>
/// One edit on one file, written in a line: `set /a x`, `set-text /a x`, `add / key x`, `add-first / key x`, `add / key x after a`,
/// `clear /a`, `insert /l 0 x`, `drop /l 0`, `read /a`, `open`, `keep`. It works from bytes to bytes, as a file on the disk.
/// </summary>
internal static class Trial
{
    /// <summary>The file that comes of it, or the sentence that refuses the edit or the file.</summary>
    public static string Of(string file, string edit)
    {
        try
        {
            var source = SourceText.FromBytes(Encoding.UTF8.GetBytes(file));
            var tree = YamlTree.Parse(source);
            Aliases.Check(tree);
            var words = edit.Split(' ', 4);
            if (words[0] == "open") return "opens";
            if (words[0] == "keep") return Encoding.UTF8.GetString(source.ToBytes());
            var path = Trees.Path(words[1]);
            if (words[0] == "read") return Aliases.Resolve(path.Find(tree)!).Value;
            return Encoding.UTF8.GetString(Made(source, Change(tree, path, words)).ToBytes());
        }
        catch (CannotEdit refusal)
        {
            return $"refused: {refusal.Message}";
        }
        catch (YamlProblem problem)
        {
            return $"{problem.Position}: {problem.Message}";
        }
    }

    private static SourceText Made(SourceText source, TextChange change)
    {
        var after = change.ApplyTo(source.Text);
        change.Inverse(source.Text).ApplyTo(after).ShouldBe(source.Text);
        return source.WithText(after);
    }

    private static TextChange Change(YamlTree tree, YamlPath path, string[] words) => words[0] switch
    {
        "set" => YamlEditor.SetScalar(tree, path, new(Rest(words), ScalarKind.Plain)),
        "set-text" => YamlEditor.SetScalar(tree, path, new(Rest(words), ScalarKind.Text)),
        "add" when words[3].Split(" after ") is [var value, var after] => YamlEditor.InsertEntry(tree, path, words[2], value, after),
        "add" => YamlEditor.InsertEntry(tree, path, words[2], words[3]),
        "add-first" => YamlEditor.InsertEntryAt(tree, path, 0, words[2], words[3]),
        "clear" => YamlEditor.RemoveEntry(tree, path),
        "insert" => YamlEditor.InsertItem(tree, path, Number(words[2]), Item(words[3])),
        "drop" => YamlEditor.RemoveItem(tree, path, Number(words[2])),
        var other => throw new ArgumentException(other),
    };

    private static string Rest(string[] words) => string.Join(' ', words[2..]);

    private static int Number(string word) => int.Parse(word, System.Globalization.CultureInfo.InvariantCulture);

    private static NewNode Item(string text) => text.Split(": ") is [var key, var value]
        ? new NewMapping([new(key, new NewScalar(value, ScalarKind.Plain))])
        : text;
}
