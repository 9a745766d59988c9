using PanelTui.Documents.Text;

namespace PanelTui.Documents.Files;

/// <summary>A file as it was read.</summary>
/// <param name="Source">Its text.</param>
/// <param name="State">What it was on disk, to be handed back when saving.</param>
/// <param name="IsReadOnly">True when saving it would be refused: it is write-protected, this user may not write it, or
/// the disk is read-only.</param>
public sealed record LoadedFile(SourceText Source, DiskState State, bool IsReadOnly);
