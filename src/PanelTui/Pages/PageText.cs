using System.Collections.Immutable;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>A page as the rows that are in sight: its heading, then as many rows as there is room for.</summary>
internal static class PageText
{
    /// <summary>Columns before each row: the mark of the chosen one.</summary>
    public const int Margin = 2;

    private const int LeastRows = 4;

    public static ImmutableArray<ImmutableArray<TextRun>> Of(Page page, Session session, int columns, int rows)
    {
        var all = page.Rows(session, columns - Margin);
        var pinned = PinnedOf(page, session, columns, rows);
        var height = rows - 1 - pinned.Length;
        page.Place = page.Place.Fitted(all, height);
        var place = page.Place;
        return
        [
            Heading(page.Title(session), place.Top, all.Length, height, columns),
            .. pinned.Select(row => Row(row, false)),
            .. all.Skip(place.Top).Take(height).Select((row, at) => Row(row, row.CanBeChosen && place.Top + at == place.Chosen)),
        ];
    }

    /// <summary>What stays in sight, cut off where fewer than <see cref="LeastRows"/> rows would be left to scroll.</summary>
    public static ImmutableArray<PageRow> PinnedOf(Page page, Session session, int columns, int rows) =>
        [.. page.Pinned(session, columns - Margin).Take(Math.Max(0, rows - 1 - LeastRows))];

    private static ImmutableArray<TextRun> Heading(string title, int top, int all, int height, int columns)
    {
        var more = all <= height ? "" : $"{top + 1}-{Math.Min(all, top + height)} of {all} ";
        return [new TextRun($"{DisplayText.Fit($" {DisplayText.Clean(title)}", Math.Max(0, columns - more.Length))}{more}", Tone.Strong)];
    }

    private static ImmutableArray<TextRun> Row(PageRow row, bool isChosen) =>
        isChosen
            ? [new TextRun("> "), .. row.Runs.Select((run, at) => row.Cell is null || row.Cell == at ? run with { Tone = Tone.Cursor } : run)]
            : [new TextRun("  "), .. row.Runs];
}
