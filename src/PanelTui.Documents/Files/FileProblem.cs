namespace PanelTui.Documents.Files;

/// <summary>A file could not be read or written; the message is a whole sentence for the user.</summary>
#pragma warning disable CA1032, CA1710 // Without a fault it would be no FileProblem; and it is named for what it tells the user.
public class FileProblem(FileFault fault, string sentence, Exception? cause = null) : Exception(sentence, cause)
{
    public FileFault Fault { get; } = fault;
}

/// <summary>
/// A file was not saved. Unless the sentence says otherwise, what is on disk is unchanged, and the sentence says so.
/// </summary>
public sealed class SaveRefused(FileFault fault, string sentence, Exception? cause = null) : FileProblem(fault, sentence, cause);
#pragma warning restore CA1032, CA1710
