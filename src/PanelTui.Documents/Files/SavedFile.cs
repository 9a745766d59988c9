namespace PanelTui.Documents.Files;

/// <summary>A file as it was saved.</summary>
/// <param name="State">What it is on disk now, to be handed back at the next save.</param>
/// <param name="Note">
/// A sentence to show when the file had to be written in place, or the disk did not confirm it; else null.
/// </param>
public sealed record SavedFile(DiskState State, string? Note);
