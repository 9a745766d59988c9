using System.Collections.Immutable;
using PanelTui.Presentation;

namespace PanelTui.Editing;

/// <summary>One field of a form.</summary>
/// <param name="Columns">Its width; 0 shares what the others leave.</param>
/// <param name="Hint">What may stand in it, shown while it has the focus.</param>
internal sealed record FormField(string Label, string Value, int Columns, string Hint)
{
    /// <summary>Whether Enter passes over it on the way through a new form; Tab stops at it all the same.</summary>
    public bool EnterPasses { get; init; }

    /// <summary>The hint without the clauses at its end that have no room.</summary>
    public string HintWithin(int columns)
    {
        var hint = Hint;
        while (DisplayText.Width(hint) > columns && hint.LastIndexOf("; ", StringComparison.Ordinal) is > 0 and var at) hint = hint[..at];
        return hint;
    }

    /// <summary>What was typed before the form was there: it stands in the place of the value, with the cursor after it.</summary>
    public string? Begun { get; init; }

    /// <summary>Good values for a text begun, the whole text of the field each; with nothing typed, all of them.</summary>
    public Func<string, ImmutableArray<string>>? Offers { get; init; }
}
