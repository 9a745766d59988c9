using System.Collections.Immutable;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Yaml;

/// <summary>A text read as YAML: its values as a tree, each with its exact place. The text stays the truth.</summary>
public sealed class YamlTree
{
    internal YamlTree(SourceText source, YamlNode? root, ImmutableArray<TextSpan> comments)
    {
        Source = source;
        Root = root;
        Comments = comments;
    }

    public SourceText Source { get; }

    /// <summary>The topmost value; null for a file that holds nothing but blanks and comments.</summary>
    public YamlNode? Root { get; }

    /// <summary>Every comment in the file's order, from its <c>#</c> to the end of its line.</summary>
    public ImmutableArray<TextSpan> Comments { get; }

    /// <summary>Reads the text. Nothing named by a tag is ever created, and aliases are left as they are.</summary>
    /// <exception cref="YamlProblem">What is wrong and where; no other exception leaves.</exception>
    public static YamlTree Parse(SourceText source, ParseLimits? limits = null)
    {
        ConflictMarkers.Refuse(source);
        return TreeReader.Read(source, limits ?? ParseLimits.Default);
    }
}
