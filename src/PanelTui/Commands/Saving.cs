using PanelTui.Documents.Files;
using PanelTui.Documents.Yaml;
using PanelTui.Engine;
using PanelTui.Pages;

namespace PanelTui.Commands;

/// <summary>Saves, and where that is refused says why or asks what to do; the work stays in the editor either way.</summary>
internal static class Saving
{
    /// <returns>Whether it was saved.</returns>
    public static bool Try(IEditor editor) => Try(editor, session => session.Save());

    public static bool Try(IEditor editor, Func<Session, FileProblem?> save)
    {
        if (save(editor.Session) is not { } problem) return true;
        if (editor.Page is QuestionPage) editor.ClosePage();
        if (problem.Fault == FileFault.ChangedUnderneath && Question(editor.Session.Path) is { } page) editor.Open(page);
        else editor.Session.Say($"{problem.Message}{WayOut(problem.Fault)}");
        return false;
    }

    private static Page? Question(string path)
    {
        try
        {
            return new ChangedUnderneathPage(ScheduleFile.Load(path));
        }
        catch (FileProblem problem) when (problem.Fault == FileFault.NotFound)
        {
            return new DeletedPage();
        }
        catch (Exception problem) when (problem is FileProblem or YamlProblem)
        {
            return null; // it cannot even be read: the refusal's own words have to do
        }
    }

    private static string WayOut(FileFault fault) => fault switch
    {
        FileFault.DiskFull => " Make room and save again, or press w to save it elsewhere.",
        FileFault.ReadOnly or FileFault.NoPermission or FileFault.NoSuchFolder or FileFault.ChangedUnderneath => " Press w to save it elsewhere.",
        FileFault.NotFound or FileFault.NotAFile or FileFault.TooLarge or FileFault.LinkLoop or FileFault.BadName
            or FileFault.Other => "",
        _ => throw Unnamed.Of(fault),
    };
}
