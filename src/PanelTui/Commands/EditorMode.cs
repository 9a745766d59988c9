namespace PanelTui.Commands;

/// <summary>What the editor is about: the keys that work differ with it.</summary>
[Flags]
internal enum EditorMode
{
    None = 0,

    /// <summary>The cursor walks the face of the panel.</summary>
    Face = 1,

    /// <summary>A breaker is in the hand.</summary>
    Hand = 2,

    /// <summary>A form is open.</summary>
    Form = 4,

    /// <summary>The program asks whether to leave with unsaved changes.</summary>
    Leaving = 8,

    /// <summary>A page lies over the face.</summary>
    Page = 16,
}
