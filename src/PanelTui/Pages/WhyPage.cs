using System.Collections.Immutable;
using PanelTui.Commands;
using PanelTui.Engine.Derivations;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>How a figure came about, step by step with its sections; the circuits that made it up can be gone to.</summary>
/// <param name="figure">The figure to open with, by its name; where the schedule has none of that name, its first one.</param>
internal sealed class WhyPage(string figure) : Page
{
    private string _figure = figure;

    public override bool CanTurn => true;

    public override ImmutableArray<EditorCommand> Commands =>
    [
        new PageCommand("C", "Copy these steps to the clipboard", (editor, _) => editor.CopyText(TextOf(editor.Session)), Key.C.WithShift) { Word = "copy" },
    ];

    public override string Title(Session session)
    {
        var figures = Figures(session);
        var at = At(figures);
        return $"Why {figures[at]} ({at + 1} of {figures.Length}): {session.Assessment.Why(figures[at])!.Title}";
    }

    public override ImmutableArray<PageRow> Rows(Session session, int columns)
    {
        var figures = Figures(session);
        return WhyRows.Of(session.Assessment.Why(figures[At(figures)])!, columns);
    }

    /// <summary>What the steps come to, so that it is in sight wherever the reader is.</summary>
    public override string Detail(Session session, int chosen)
    {
        var figures = Figures(session);
        var last = session.Assessment.Why(figures[At(figures)])!.Steps.LastOrDefault();
        return session.Message.Length > 0 || last is null ? session.Message : $"Comes to: {last.Label}, {DerivationText.Value(last)}";
    }

    public override void Turn(Session session, int by)
    {
        var figures = Figures(session);
        _figure = figures[(At(figures) + by + figures.Length) % figures.Length];
        Place = PagePlace.Start;
        session.Say("");
    }

    /// <summary>Those of the whole panel, then that of the circuit under the cursor.</summary>
    private static ImmutableArray<string> Figures(Session session)
    {
        var here = session.Here is { } circuit ? FigureNames.Branch(circuit.Space) : null;
        return [.. session.Assessment.Figures.Where(name => FigureNames.SpaceOf(name) is null || name == here)];
    }

    private string TextOf(Session session)
    {
        var figures = Figures(session);
        return string.Join('\n', DerivationText.Of(session.Assessment.Why(figures[At(figures)])!));
    }

    private int At(ImmutableArray<string> figures) => Math.Max(0, figures.IndexOf(_figure));
}
