namespace PanelTui.Documents.Writing;

/// <summary>How a new mapping or sequence is to be written. Inside brackets everything is in brackets.</summary>
public enum CollectionStyle
{
    /// <summary>
    /// As the collections beside it are written; where there are none, lists of single values in brackets, all else by
    /// indentation.
    /// </summary>
    LikeNeighbours,

    /// <summary>By indentation, one entry a line.</summary>
    Block,

    /// <summary>In brackets, on one line.</summary>
    Flow,
}
