using System.Diagnostics.CodeAnalysis;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Intents;

/// <summary>What came of something the user wants: a change that does it, or a sentence that says why not.</summary>
/// <param name="Change">
/// One step of undo, titled in the user's words; without edits where the file says so already.
/// </param>
/// <param name="After">The file after the change, for showing what it would do.</param>
/// <param name="Refusal">Why nothing can be changed.</param>
public sealed record Intended(TextChange? Change, Snapshot? After, string? Refusal)
{
    [MemberNotNullWhen(true, nameof(Change), nameof(After))]
    [MemberNotNullWhen(false, nameof(Refusal))]
    public bool IsPossible => Refusal is null;

    internal static Intended Refused(string reason) => new(null, null, reason);
}
