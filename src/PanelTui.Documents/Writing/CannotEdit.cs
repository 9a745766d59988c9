namespace PanelTui.Documents.Writing;

/// <summary>An edit that will not be made, with the reason as a sentence. Nothing has been changed.</summary>
#pragma warning disable CA1032, CA1710 // Without a reason it would be no CannotEdit; and it is named for what it tells the user.
public sealed class CannotEdit(string reason, Exception? cause = null) : Exception(reason, cause);
#pragma warning restore CA1032, CA1710
