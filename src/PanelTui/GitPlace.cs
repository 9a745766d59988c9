using PanelTui.CommandLine;

namespace PanelTui;

/// <summary>Where a schedule stands in git: the branch, and the bytes of its last commit.</summary>
/// <param name="Branch">The branch, or the first letters of the commit where none is checked out.</param>
/// <param name="Committed">The file as HEAD has it; nothing where it has never been committed.</param>
internal sealed record GitPlace(string Branch, byte[]? Committed)
{
    /// <summary>Asks git, which takes a moment; nothing without git, without a repository, or before the first commit.</summary>
    public static GitPlace? Of(string path)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        var branch = Git.Run(folder, "rev-parse", "--abbrev-ref", "HEAD");
        if (!branch.Succeeded) return null;
        var name = branch.Text == "HEAD" ? Git.Run(folder, "rev-parse", "--short", "HEAD").Text : branch.Text;
        return new GitPlace(name, Git.Show("HEAD", path) is { Succeeded: true } shown ? shown.Out : null);
    }

    public bool IsCommitted(ReadOnlySpan<byte> bytes) => Committed is not null && bytes.SequenceEqual(Committed);
}
