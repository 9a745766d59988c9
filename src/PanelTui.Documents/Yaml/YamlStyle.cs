namespace PanelTui.Documents.Yaml;

/// <summary>How a node is written.</summary>
public enum YamlStyle
{
    /// <summary>A scalar without quotes, an empty value, or an alias.</summary>
    Plain,
    SingleQuoted,
    DoubleQuoted,

    /// <summary>A scalar after <c>|</c>, its line breaks kept.</summary>
    Literal,

    /// <summary>A scalar after <c>&gt;</c>, its lines joined.</summary>
    Folded,

    /// <summary>A collection by indentation.</summary>
    Block,

    /// <summary>A collection in brackets, or a single <c>key: value</c> inside brackets.</summary>
    Flow,
}
