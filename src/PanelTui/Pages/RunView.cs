using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>One side of what the source feels, to read and to scroll; the keys of the other sides work here, too.</summary>
/// <param name="title">The heading.</param>
/// <param name="lines">What stands on it.</param>
/// <param name="views">The keys of every side.</param>
/// <param name="turn">Turns to another scenario.</param>
internal sealed class RunView(
    Func<Session, string> title, Func<Session, IEnumerable<string>> lines, ImmutableArray<EditorCommand> views, Action<int> turn) : Page
{
    public override bool CanTurn => true;

    public override ImmutableArray<EditorCommand> Commands => views;

    public override string Title(Session session) => title(session);

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
        [.. lines(session).SelectMany(line => DisplayText.Width(line) <= columns ? [line] : Wrapped.Of(line, columns)).Select(line => new PageRow(line))];

    public override void Turn(Session session, int by)
    {
        turn(by);
        Place = PagePlace.Start;
    }
}
