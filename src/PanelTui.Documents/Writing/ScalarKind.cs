namespace PanelTui.Documents.Writing;

/// <summary>How the text of a new scalar is to be read back.</summary>
public enum ScalarKind
{
    /// <summary>Free text: quoted whenever a reader of YAML 1.1 or 1.2 would take it for something else.</summary>
    Text,

    /// <summary>
    /// A number, a boolean or a quantity such as <c>20 A</c>: written bare, and resolved as YAML 1.2 resolves it.
    /// </summary>
    Plain,
}
