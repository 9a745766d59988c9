using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Pages;

/// <summary>Every circuit, narrowed down by what is typed: a part of its name, load, space or id. Enter goes there.</summary>
internal sealed class FindPage : Page
{
    public override bool TakesText => true;

    public override string Title(Session session) => Typed.Length == 0
        ? $"Find a circuit: type a part of it ({session.Schedule.Circuits.Length} circuits)"
        : $"Circuits with: {Typed} ({Found(session).Count} of {session.Schedule.Circuits.Length})";

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var found = Found(session);
        return found.Count == 0
            ? [new PageRow($"No circuit has {DisplayText.Clean(Typed)} in it.")]
            : [.. found.Select(circuit => new PageRow(
                DisplayText.Fit(DisplayText.Clean(TextOf(session, circuit)), columns), Tone.Plain, editor => GoTo(editor, circuit.Space)))];
    }

    public override string Detail(Session session, int chosen) =>
        Found(session) is var found && chosen >= 0 && chosen < found.Count ? TextOf(session, found[chosen]) : session.Message;

    private List<Circuit> Found(Session session) => [.. Match.Of(
        session.Schedule.Circuits.OrderBy(circuit => circuit.Space), circuit => $"{TextOf(session, circuit)} {circuit.Id}", Typed)];

    private static string TextOf(Session session, Circuit circuit) =>
        CircuitText.Line(session.Assessment, circuit, LoadPhrase.Of(session.Now, circuit.Ordinal));

    private static void GoTo(IEditor editor, SpaceNumber space)
    {
        editor.CloseAllPages();
        editor.Session.MoveCursor(space);
    }
}
