using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Text;
using PanelTui.Screens;
using PanelTui.Terminal;

namespace PanelTui.Tests.Screens;

/// <summary>The editor with lock and kept work, on a schedule that an earlier run may have left something for.</summary>
internal sealed class DeskEditor : IDisposable
{
    private readonly TempFolder _state = new();
    private Desk? _desk;

    /// <param name="before">What happened in the state folder before the schedule, named by its path, was opened.</param>
    /// <param name="text">The schedule.</param>
    public DeskEditor(Action<DeskEditor, string>? before = null, string text = Shed.Text) => Editor = new OpenEditor(text, screen: (session, app) =>
    {
        before?.Invoke(this, session.Path);
        _desk = new Desk(session, State, Clock);
        return _desk.Open(app);
    });

    public OpenEditor Editor { get; }

    public HandClock Clock { get; } = new();

    public StateFolder State => new(_state.File("paneltui"));

    public string[] Kept(string pattern) =>
        Directory.Exists(State.Root) ? Directory.GetFiles(State.Root, pattern, SearchOption.AllDirectories) : [];

    /// <summary>Work on the schedule that an earlier run has left.</summary>
    public void Leave(string schedule, string text, int changes = 2)
    {
        using (var journal = new Journal(State, Clock)) journal.Keep(schedule, SourceText.FromString(Shed.Text), text, changes);
        foreach (var file in Kept("*.journal")) Replace(file, $"\"started\":{Owner.Here.Started}", "\"started\":1");
    }

    /// <summary>A lock that another machine holds.</summary>
    public void LockElsewhere(string schedule)
    {
        EditLock.Take(State, schedule); // stays behind, as that of an editor that still runs
        var file = Kept("lock").Single();
        Replace(file, $"\"host\":\"{Owner.Here.Host}\"", "\"host\":\"barn\"");
        Replace(file, $"\"user\":\"{Owner.Here.User}\"", "\"user\":\"ada\"");
        Replace(file, $"\"process\":{Owner.Here.Process}", "\"process\":4711");
    }

    /// <summary>The program ends because its user left.</summary>
    public void End() => _desk!.End(new Ending(EndingCause.Quit));

    public void Dispose()
    {
        Editor.Dispose();
        _desk?.Dispose();
        _state.Dispose();
    }

    private static void Replace(string file, string old, string now) =>
        File.WriteAllText(file, File.ReadAllText(file).Replace(old, now, StringComparison.Ordinal));
}
