using PanelTui.Documents.Text;
using YamlDotNet.Core;

namespace PanelTui.Documents.Yaml;

/// <summary>The one place where the YAML library is called and where its errors become ours.</summary>
internal static class TreeReader
{
    public static YamlTree Read(SourceText source, ParseLimits limits)
    {
        using var reader = new StringReader(source.Text);
        var scanner = new RecordingScanner(new Scanner(reader));
        try
        {
            var root = new EventTree(source, limits).Read(new Parser(scanner));
            return Placed(source, scanner, root);
        }
        catch (Exception error) when (IsLibraryError(error))
        {
            throw LibraryProblem.Translate(source, scanner, error);
        }
    }

    private static YamlTree Placed(SourceText source, RecordingScanner scanner, YamlNode? root)
    {
        if (root is not null) new TokenWalk(source, scanner.Tokens).Place(root);
        return new(source, root, StructureGate.Check(source, scanner.Tokens, root));
    }

    // Besides its own exception the library throws these on some broken files, such as an unclosed bracket.
    private static bool IsLibraryError(Exception error) =>
        error is YamlException or InvalidOperationException or ArgumentException or IndexOutOfRangeException or FormatException;
}
