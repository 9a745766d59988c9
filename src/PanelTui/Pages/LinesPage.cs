using System.Collections.Immutable;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Lines to read and to scroll.</summary>
/// <param name="title">The heading.</param>
/// <param name="lines">What stands on it, for so many columns.</param>
internal sealed class LinesPage(string title, Func<Session, IEnumerable<string>> lines) : Page
{
    public override string Title(Session session) => title;

    public override ImmutableArray<PageRow> Rows(Session session, int columns) =>
        [.. lines(session).SelectMany(line => DisplayText.Width(line) <= columns ? [line] : Wrapped.Of(line, columns)).Select(line => new PageRow(line))];
}
