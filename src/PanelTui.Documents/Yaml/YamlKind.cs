namespace PanelTui.Documents.Yaml;

public enum YamlKind
{
    Scalar,
    Mapping,
    Sequence,
    Alias,
}
