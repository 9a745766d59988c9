using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>A row of a page; one that Enter can do something with can be chosen.</summary>
internal sealed record PageRow(ImmutableArray<TextRun> Runs, Action<IEditor>? Enter = null)
{
    public static readonly PageRow Gap = new([]);

    public PageRow(string text, Tone tone = Tone.Plain, Action<IEditor>? enter = null)
        : this([new TextRun(text, tone)], enter)
    {
    }

    /// <summary>Which of the runs is the cursor while the row is chosen; nothing for all of them.</summary>
    public int? Cell { get; init; }

    public bool CanBeChosen => Enter is not null;
}
