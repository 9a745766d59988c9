using System.Collections.Immutable;
using PanelTui.Editing;
using PanelTui.Presentation;

namespace PanelTui.Screens;

/// <summary>The rows below the fields of a form: why it was refused, else what may stand in the field, and what can be chosen.</summary>
internal static class FormText
{
    public static ImmutableArray<ImmutableArray<TextRun>> Below(
        FormField field, string? refusal, ImmutableArray<string> offers, string text, int columns)
    {
        var said = refusal is null
            ? EditorRows.Lines(field.HintWithin(columns - 2), columns, Tone.Plain).Take(1)
            : EditorRows.Lines($"! {refusal}", columns, Tone.Error);
        return
        [
            [],
            .. said.Select(line => ImmutableArray.Create(line)),
            .. offers.IsEmpty ? [] : new[] { Choices(offers, text, columns) },
        ];
    }

    public static ImmutableArray<TextRun> Keys(FormKeys keys, int columns) => KeyLine.Of(
        [
            ("Enter", keys.EnterGoesOn ? "next" : "done"),
            .. (keys.TabCompletes ? "complete" : keys.Tab) is { } tab ? new[] { ("Tab", tab) } : [],
            .. keys.HasOffers ? new[] { ("↓", "choose") } : [],
            ("Esc", "give up"),
            .. keys.TypingReplaces ? new[] { ("typing", "replaces"), ("→", "keeps") } : [],
        ],
        columns);

    /// <summary>The offered values in a row, from the chosen one on where not all of them fit.</summary>
    private static ImmutableArray<TextRun> Choices(ImmutableArray<string> offers, string text, int columns)
    {
        var chosen = Math.Max(0, offers.IndexOf(text));
        var room = columns - 3;
        var first = offers.Take(chosen + 1).Sum(Width) <= room ? 0 : chosen;
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        runs.Add(new TextRun(first == 0 ? " ↓" : " …", Tone.Faint));
        foreach (var offer in offers.Skip(first))
        {
            if (Width(offer) > room) break;
            room -= Width(offer);
            runs.Add(new TextRun("  "));
            runs.Add(new TextRun(DisplayText.Clean(offer), offer == text ? Tone.Cursor : Tone.Plain));
        }

        return runs.ToImmutable();
    }

    private static int Width(string offer) => DisplayText.Width(offer) + 2;
}
