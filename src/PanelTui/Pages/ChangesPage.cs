using System.Collections.Immutable;
using PanelTui.CommandLine;
using PanelTui.Documents;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>What has changed since the last save, or since the last commit in git, as facts about the panel with the figures.</summary>
internal sealed class ChangesPage : Page
{
    private bool _sinceCommit;
    private (Snapshot? Version, string? WhyNot)? _commit;
    private Snapshot? _saved;
    private (Snapshot Before, Snapshot Now, ImmutableArray<string> Lines)? _told;

    public override bool CanTurn => true;

    public override string Title(Session session) =>
        _sinceCommit ? "Changed since the last commit in git (HEAD)" : "Changed since the last save";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var (before, whyNot) = _sinceCommit ? Commit(session) : (SavedVersion(session), null);
        if (before is null) return Sentence(whyNot ?? "", columns);
        if (_told is not { } told || told.Before != before || told.Now != session.Now)
        {
            var changes = ScheduleChanges.Between(before, session.Now);
            _told = told = (before, session.Now, changes.AreNone ? ["Nothing."] : [.. ChangeText.Plain(changes)]);
        }

        return [.. told.Lines.SelectMany(line => Line(line, columns))];
    }

    public override string Detail(Session session, int chosen) => session.Message.Length > 0
        ? session.Message
        : $"+ added, - removed, > moved, ~ changed. ← → turns to what changed since the last {(_sinceCommit ? "save" : "commit")}.";

    public override void Turn(Session session, int by)
    {
        _sinceCommit = !_sinceCommit;
        Place = PagePlace.Start;
        session.Say("");
    }

    private Snapshot SavedVersion(Session session) =>
        _saved is { } saved && ReferenceEquals(saved.Source, session.OnDisk) ? saved : _saved = Snapshot.Of(session.OnDisk);

    /// <summary>Asked of git once, when it is first looked at.</summary>
    private (Snapshot? Version, string? WhyNot) Commit(Session session) => _commit ??= ReadCommit(session.Path);

    private static (Snapshot? Version, string? WhyNot) ReadCommit(string path)
    {
        var shown = Git.Show("HEAD", path);
        if (!shown.Succeeded) return (null, WhyNone(shown.Error));
        try
        {
            return (Snapshot.Of(SourceText.FromBytes(shown.Out)), null);
        }
        catch (YamlProblem problem)
        {
            return (null, $"The last commit cannot be read: line {problem.Position.Line}: {problem.Message}");
        }
    }

    private static string WhyNone(string error) =>
        error.Contains("not a git repository", StringComparison.Ordinal)
            ? "The file is in no git repository, so there is no commit to compare it with."
            : error.Contains("invalid object name", StringComparison.Ordinal)
                ? "The repository has no commit yet, so there is none to compare the file with."
                : $"git has no last commit of this file: {error}";

    private static ImmutableArray<PageRow> Sentence(string text, int columns) =>
        [.. Wrapped.Of(DisplayText.Clean(text), columns).Select(line => new PageRow(line))];

    private static IEnumerable<PageRow> Line(string line, int columns) => line.Length == 0
        ? [PageRow.Gap]
        : DisplayText.Width(line) <= columns ? [new PageRow(line)] : Wrapped.Of(line, columns - 2).Select((part, at) => new PageRow(at == 0 ? part : $"  {part}"));
}
