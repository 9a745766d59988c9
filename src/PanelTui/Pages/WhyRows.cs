using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>The steps of a derivation as rows: label, value, then where it comes from, named once for steps that share it.</summary>
internal static class WhyRows
{
    private const int ValueColumns = 13;
    private const int Indent = 4;

    public static ImmutableArray<PageRow> Of(Derivation derivation, int columns) =>
        [.. derivation.Steps.SelectMany((step, at) => Step(step, at == 0 ? null : derivation.Steps[at - 1], columns))];

    private static IEnumerable<PageRow> Step(DerivationStep step, DerivationStep? before, int columns)
    {
        var where = step.Spaces.IsEmpty ? "" : $" (space {string.Join(", ", step.Spaces)})";
        var labels = Wrapped.Of(DisplayText.Clean(step.Label + where), columns - ValueColumns - 1).ToList();
        Action<IEditor>? enter = step.Spaces.IsEmpty ? null : editor => GoTo(editor, step.Spaces[0]);
        yield return new PageRow($"{DisplayText.Fit(labels[0], columns - ValueColumns)}{DerivationText.Value(step),ValueColumns}", Tone.Plain, enter);
        foreach (var label in labels.Skip(1)) yield return new PageRow(label);
        if (before is not null && $"{before.Cite}" == $"{step.Cite}") yield break;
        foreach (var line in Wrapped.Of($"by {step.Cite}", columns - Indent))
            yield return new PageRow(new string(' ', Indent) + line, Tone.Faint);
    }

    private static void GoTo(IEditor editor, SpaceNumber space)
    {
        editor.CloseAllPages();
        editor.Session.MoveCursor(space);
    }
}
