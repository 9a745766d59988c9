namespace PanelTui.Documents.Yaml;

/// <summary>What a plain scalar is by the core schema of YAML 1.2.2 (section 10.3.2).</summary>
public enum CoreType
{
    Null,
    Boolean,
    WholeNumber,
    Number,
    Text,
}
