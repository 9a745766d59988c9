using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Documents;
using PanelTui.Engine.Rules;
using PanelTui.Pages;
using PanelTui.Presentation;

namespace PanelTui.Screens;

/// <summary>The rows of the editor's parts for what the session holds now.</summary>
internal static class EditorRows
{
    /// <summary>The count and the worst of them; blank rows between the figures give way to these.</summary>
    private const int RowsForFindings = 4;

    private const int RowsForMessage = 2;

    /// <summary>A window of fewer rows keeps them for the face.</summary>
    private const int RoomToGrow = 14;

    private const int BranchColumns = 16;

    public static ImmutableArray<TextRun> Title(Session session, int columns)
    {
        var panel = session.Schedule.Panel;
        var name = panel.Name.Length == 0 ? "(panel without a name)" : panel.Name;
        var state = $"{InEditor(session)}{OnDisk(session)}{InGit(session)}";
        var right = $"{Path.GetFileName(session.Path)}{state} ";
        var left = DisplayText.Fit($" {name} · {panel.System}", Math.Max(0, columns - DisplayText.Width(right) - 1));
        return [new TextRun($"{left} {right}", Tone.Strong)];
    }

    private static string InEditor(Session session) => session switch
    {
        { WhyNoEdit: not null } => " · look only",
        { IsSaved: true } => "",
        { WhyNotKept: not null } => " · changed, no recovery copy",
        _ => " · changed",
    };

    private static string OnDisk(Session session) => session.Newer switch
    {
        null => "",
        { Exists: true } => " · newer on disk",
        { Exists: false } => " · gone from disk",
    };

    /// <summary>The branch, and whether the file as it was saved last is what was committed.</summary>
    private static string InGit(Session session) => session.Git is not { } git
        ? ""
        : $" · {DisplayText.Fit(DisplayText.Clean(git.Branch), Math.Min(DisplayText.Width(git.Branch), BranchColumns))}{(session.IsCommitted ? "" : " uncommitted")}";

    public static ImmutableArray<ImmutableArray<TextRun>> Face(Session session, FaceText text, int top, int rows)
    {
        var look = session.Hand is { } hand
            ? new FaceLook(session.Cursor, hand.Circuit.Ordinal, hand.Landing)
            : FaceLook.At(session.Cursor);
        var lines = session.Face.Lines.Skip(top).Take(rows - 1);
        return [text.Header(), .. lines.Select(line => text.Row(line, look))];
    }

    public static ImmutableArray<ImmutableArray<TextRun>> Figures(Session session, int columns, int rows) =>
        [.. FigureList(session, columns, rows).Select(row => ImmutableArray.Create(row.In(columns)))];

    public static ImmutableArray<FigureRow> FigureList(Session session, int columns, int rows)
    {
        var then = session.Preview?.Assessment;
        var shown = then is null ? session.Now : session.Preview!;
        ImmutableArray<FigureRow> figures = [.. FigureRows.Of(session.Assessment, then), FigureRow.Gap];
        var findings = FindingRows.Of(shown, columns, rows);
        if (figures.Length + Math.Min(findings.Length, RowsForFindings) > rows) figures = [.. figures.Where(row => row != FigureRow.Gap)];
        return [.. figures, .. findings.Take(Math.Max(1, rows - figures.Length))];
    }

    /// <summary>All of the circuit under the cursor, then what there is to say; the first gives way to the second.</summary>
    public static ImmutableArray<ImmutableArray<TextRun>> Detail(Session session, EditorMode mode, int columns, int rows)
    {
        ImmutableArray<TextRun> message = [.. Message(session, mode, columns).Take(rows)];
        var circuit = session.Here is { } here
            ? CircuitText.Line(session.Assessment, here, LoadPhrase.Of(session.Now, here.Ordinal))
            : CircuitText.OpenLine(session.Schedule, session.Cursor);
        var detail = Lines(circuit, columns, Tone.Plain).Take(Math.Max(rows - message.Length, mode == EditorMode.Hand ? 0 : 1));
        return [.. detail.Concat(message).Take(rows).Select(run => ImmutableArray.Create(run))];
    }

    /// <summary>Over as many rows as it takes, where there are so many; else its beginning.</summary>
    public static ImmutableArray<ImmutableArray<TextRun>> TooSmall(int columns, int rows)
    {
        var lines = Wrapped.Of(EditorLayout.TooSmall, Math.Max(1, columns)).ToList();
        return lines.Count > rows ? [[new TextRun(EditorLayout.TooSmall)]] : [.. lines.Select(line => ImmutableArray.Create(new TextRun(line)))];
    }

    /// <summary>Rows that a message takes beyond the two there are beside the circuit, where the window is tall enough.</summary>
    public static int MoreFor(string message, int columns, int rows) => message.Length < columns || rows < RoomToGrow
        ? 0
        : Math.Clamp(Lines(message, columns, Tone.Plain).Count() - RowsForMessage, 0, (rows - RoomToGrow) / 2);

    public static ImmutableArray<ImmutableArray<TextRun>> PageDetail(Page page, Session session, int columns) =>
        [.. Lines(page.Detail(session, page.Place.Chosen), columns, Tone.Plain).Select(line => ImmutableArray.Create(line))];

    /// <summary>A sentence over as many rows as it takes, one column in.</summary>
    public static IEnumerable<TextRun> Lines(string sentence, int columns, Tone tone) =>
        Wrapped.Of(DisplayText.Clean(sentence), columns - 2).Select(line => new TextRun($" {line}", tone));

    /// <summary>What would be lost, as far as it can be said in a line or two.</summary>
    private static string Unsaved(Session session) => string.Join("; ", WouldChange.Lines(Snapshot.Of(session.OnDisk), session.Now));

    /// <summary>What there is to say: of the hand, of the last key, or of the circuit under the cursor.</summary>
    private static IEnumerable<TextRun> Message(Session session, EditorMode mode, int columns)
    {
        if (mode == EditorMode.Leaving) return Lines($"Not saved yet. Leave? {Unsaved(session)}", columns, Tone.Warning);
        if (session.Hand is { } hand) return Lines(hand.Message, columns, hand.Plan.WhyNot is null ? Tone.Plain : Tone.Warning);
        if (session.Message.Length > 0) return Lines(session.Message, columns, Tone.Plain);
        var here = session.Here?.Spaces.ToList();
        return session.Assessment.Findings.FirstOrDefault(finding => here is not null && finding.Spaces.Any(here.Contains)) is { } finding
            ? Lines($"{finding.Severity.Mark} {finding.Message}", columns, Tone.Warning)
            : [];
    }

    public static ImmutableArray<TextRun> Keys(IEditor editor, int columns) => KeyLine.Of(
        CommandBook.Here(editor)
            .Where(command => command.Hint is not null && command.WhyNotNow(editor) is null)
            .DistinctBy(command => command.HintKey)
            .Select(command => (command.HintKey, command.Hint!)),
        columns);
}
