using PanelTui.Documents.Files;
using PanelTui.Editing;

namespace PanelTui.Tests.Saving;

/// <summary>
/// A program that opens a schedule, makes one change and saves at once, with the state folder of its user.
/// </summary>
internal static class SavedEdit
{
    public const string Argument = "--edit-and-save";

    public static string Before => Shed.Text;

    public static string After { get; } = Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal);

    /// <summary>Prints what the editor says at the start, and then what it says about the save.</summary>
    public static int Run(string file)
    {
        var session = Session.Open(file).Session!;
        Console.WriteLine($"opened: {session.Message}");
        using var keeping = new Keeping(session, StateFolder.OfUser, TimeProvider.System, action => action());
        session.Replace("another name", After);
        var problem = session.Save();
        Console.WriteLine($"saved: {problem?.Message ?? session.Message}");
        return problem is null ? 0 : 1;
    }
}
