using System.Runtime.CompilerServices;
using PanelTui.Documents.Files;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.Screens;

/// <summary>Goes once, on a copy and off the screen, through what the first keys will ask for.</summary>
/// <remarks>Under the just-in-time compiler the first move or carry waited for its code to be compiled, 40 to 50 ms; a native build has nothing to rehearse.</remarks>
internal static class Rehearsal
{
    /// <summary>Characters of a file that is rehearsed: a copy of a larger one would take memory and a processor from the first keys.</summary>
    private const int Longest = 256 * 1024;

    private const int Rounds = 3;
    private const int Columns = 80;
    private const int Rows = 24;

    public static void Of(string path)
    {
        if (!RuntimeFeature.IsDynamicCodeCompiled || new FileInfo(path) is { Exists: true, Length: > Longest }) return;
        try
        {
            if (Session.Open(path).Session is { } copy) Walk(copy);
        }
        catch (Exception problem) when (problem is FileProblem or YamlProblem)
        {
            // The copy alone is missing; the keys work as they would without it.
        }
    }

    private static void Walk(Session copy)
    {
        if (copy.Schedule.Circuits.IsEmpty) return;
        for (var round = 0; round < Rounds; round++)
        {
            copy.MoveCursor(copy.Schedule.Circuits[0].Space);
            Look(copy);
            copy.Hold(copy.Schedule.Circuits[0]);
            copy.MoveCursor(copy.Schedule.Circuits[^1].Space);
            Look(copy);
            copy.LetGo();
        }
    }

    private static void Look(Session copy)
    {
        var layout = EditorLayout.Of(Columns, Rows, copy.Face);
        var text = new FaceText(copy.Schedule, layout.Panel.Width, new CircuitLoads(copy.Assessment).On);
        EditorRows.Title(copy, layout.Title.Width);
        EditorRows.Face(copy, text, 0, layout.Panel.Height);
        EditorRows.Figures(copy, layout.Figures.Width, layout.Figures.Height);
        SummaryRow.Of(copy.Assessment, copy.Preview?.Assessment, Columns);
        EditorRows.Detail(copy, Commands.EditorMode.Face, layout.Detail.Width, layout.Detail.Height);
    }
}
