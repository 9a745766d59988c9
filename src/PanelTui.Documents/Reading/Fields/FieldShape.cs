namespace PanelTui.Documents.Reading.Fields;

/// <summary>What stands behind a key.</summary>
public enum FieldShape
{
    Value,

    /// <summary>Several values; one alone needs no brackets.</summary>
    List,

    Mapping,

    /// <summary>A list whose entries are mappings, such as circuits.</summary>
    ListOfMappings,
}
