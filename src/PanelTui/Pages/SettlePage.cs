using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents.Files;
using PanelTui.Documents.Merging;
using PanelTui.Engine;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>What was changed on both sides, one below the other: each is settled for one side, then all are taken together.</summary>
/// <param name="merge">The two versions, with what they dispute.</param>
/// <param name="theirs">What is on disk now; nothing where that is what was opened.</param>
/// <param name="whenTaken">What follows once the merged schedule is in the editor.</param>
internal sealed class SettlePage(ScheduleMerge merge, LoadedFile? theirs, Action? whenTaken = null) : Page
{
    private const int Indent = 4;

    private readonly MergeSide?[] _sides = new MergeSide?[merge.Conflicts.Length];
    private int _columns;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("m", "Settle this one for my version", (editor, _) => Settle(editor, MergeSide.Ours), Key.M) { Word = "mine" },
        new PageCommand("o", "Settle this one for the other program's version", (editor, _) => Settle(editor, MergeSide.Theirs), Key.O)
        {
            Word = "the other's",
        },
        new PageCommand("t", "Take the merged schedule", (editor, _) => Take(editor), Key.T)
        {
            Needs = (_, _) => Left == 0 ? null : $"{Left} of {_sides.Length} are not settled yet",
            Word = "take",
        },
    ];

    private int Left => _sides.Count(side => side is null);

    public override string Title(Session session) => $"Changed on both sides: {_sides.Length - Left} of {_sides.Length} settled";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        _columns = columns;
        return [.. Enumerable.Range(0, merge.Conflicts.Length).SelectMany(at => RowsOf(at, columns))];
    }

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : "All else is merged already. Nothing is written before you take it and save.";

    private IEnumerable<PageRow> RowsOf(int at, int columns)
    {
        var conflict = merge.Conflicts[at];
        var taken = _sides[at] switch
        {
            MergeSide.Ours => "[mine] ",
            MergeSide.Theirs => "[the other's] ",
            null => "[ ] ",
            var side => throw Unnamed.Of(side),
        };
        var head = Wrapped.Of(DisplayText.Clean($"{taken}{conflict}"), columns).ToList();
        return
        [
            new PageRow(head[0], Tone.Strong, editor => Turn(editor, at)),
            .. head.Skip(1).Select(line => new PageRow(line, Tone.Strong)),
            .. Version("mine:", conflict.Ours, columns),
            .. Version("the other's:", conflict.Theirs, columns),
            .. Version("before:", conflict.Ancestor, columns),
        ];
    }

    private static IEnumerable<PageRow> Version(string title, string lines, int columns) =>
    [
        new PageRow($"  {title}{(lines.Trim().Length == 0 ? " nothing" : "")}", Tone.Faint),
        .. lines.Split('\n').Where(line => line.Trim().Length > 0)
            .Select(line => new PageRow(new string(' ', Indent) + DisplayText.Fit(DisplayText.Clean(line.TrimEnd('\r')), columns - Indent))),
    ];

    private void Turn(IEditor editor, int at)
    {
        _sides[at] = _sides[at] == MergeSide.Ours ? MergeSide.Theirs : MergeSide.Ours;
        editor.Session.Say("");
    }

    private void Settle(IEditor editor, MergeSide side)
    {
        _sides[Math.Max(0, ChosenAmong(Rows(editor.Session, _columns)))] = side;
        editor.WalkPage(1);
    }

    private void Take(IEditor editor)
    {
        if (editor.Session.TakeMerge(theirs, merge.Settled(at => _sides[at]!.Value)) is { } refusal)
        {
            editor.Session.Say($"Not merged: {refusal}");
            return;
        }

        whenTaken?.Invoke();
        editor.ClosePage();
    }
}
