using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>A page that asks: the answers, each with a key of its own, and below them what there is to know. Closing it changes nothing.</summary>
internal abstract class QuestionPage : Page
{
    private const int KeyColumns = 4;

    public override ImmutableArray<EditorCommand> Commands =>
        [.. Answers.Select(answer => new PageCommand(answer.KeyName, answer.Title, (editor, _) => Give(answer, editor), answer.Key) { Word = answer.Word })];

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
    [
        PageRow.Gap,
        .. Answers.SelectMany(answer => RowsOf(answer, columns)),
        PageRow.Gap,
        .. Facts(session).SelectMany(fact => RowsOf(fact, columns)),
    ];

    protected abstract ImmutableArray<Answer> Answers { get; }

    /// <summary>Sentences and lines, each with its tone.</summary>
    protected abstract IEnumerable<TextRun> Facts(Session session);

    private static IEnumerable<PageRow> RowsOf(Answer answer, int columns)
    {
        var lines = Wrapped.Of(DisplayText.Clean(answer.Title), columns - KeyColumns).ToList();
        return
        [
            new PageRow($"{DisplayText.Fit(answer.KeyName, KeyColumns)}{lines[0]}", Tone.Plain, editor => Give(answer, editor)),
            .. lines.Skip(1).Select(line => new PageRow(new string(' ', KeyColumns) + line)),
        ];
    }

    private static IEnumerable<PageRow> RowsOf(TextRun fact, int columns)
    {
        var indent = fact.Text[..(fact.Text.Length - fact.Text.TrimStart().Length)];
        return Wrapped.Of(DisplayText.Clean(fact.Text.TrimStart()), columns - indent.Length).Select(line => new PageRow(indent + line, fact.Tone));
    }

    private static void Give(Answer answer, IEditor editor)
    {
        editor.ClosePage();
        answer.Give(editor);
    }
}
