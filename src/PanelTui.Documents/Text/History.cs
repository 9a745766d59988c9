namespace PanelTui.Documents.Text;

/// <summary>The open text with every step that led to it. Holds the steps' splices, not copies of the text.</summary>
public sealed class History(string text)
{
    private const int NoVersion = -1;

    private readonly Stack<Step> _done = [];
    private readonly Stack<Step> _undone = [];
    private int _newest;
    private int _saved;

    public string Text { get; private set; } = text;

    /// <summary>The title of the step that <see cref="Undo"/> would take back.</summary>
    public string? UndoTitle => _done.TryPeek(out var step) ? step.Change.Title : null;

    public string? RedoTitle => _undone.TryPeek(out var step) ? step.Change.Title : null;

    /// <summary>
    /// The present version: no two texts made by <see cref="Make"/> share one, and undo returns to an old one.
    /// </summary>
    public int Version => _done.TryPeek(out var step) ? step.Version : 0;

    /// <summary>Whether the present version is the one on disk; undoing back to it makes this true again.</summary>
    public bool IsSaved => Version == _saved;

    /// <summary>
    /// How many steps, done or undone, lie between the saved version and the present one; all that are done where no step leads back to it.
    /// </summary>
    public int StepsFromSaved =>
        IsSaved ? 0
        : _saved == NoVersion ? _done.Count
        : _undone.Any(step => step.Version == _saved) ? _undone.TakeWhile(step => step.Version != _saved).Count() + 1
        : _done.TakeWhile(step => step.Version != _saved).Count();

    public void MarkSaved() => _saved = Version;

    /// <summary>No version, done or undone, is on disk any more: another program's is.</summary>
    public void MarkNoneSaved() => _saved = NoVersion;

    /// <summary>Makes the change and forgets what could be redone. A change that changes nothing is no step.</summary>
    public void Make(TextChange change)
    {
        var after = change.ApplyTo(Text);
        if (after == Text) return;
        _done.Push(new(change with { Result = null }, change.Inverse(Text), ++_newest));
        _undone.Clear();
        Text = after;
    }

    /// <summary>Takes back the last step; the change it applied, or null when there is none.</summary>
    public TextChange? Undo()
    {
        if (!_done.TryPop(out var step)) return null;
        _undone.Push(step);
        return Apply(step.Inverse);
    }

    /// <summary>Makes the last undone step again; the change it applied, or null when there is none.</summary>
    public TextChange? Redo()
    {
        if (!_undone.TryPop(out var step)) return null;
        _done.Push(step);
        return Apply(step.Change);
    }

    private TextChange Apply(TextChange change)
    {
        Text = change.ApplyTo(Text);
        return change;
    }

    private sealed record Step(TextChange Change, TextChange Inverse, int Version);
}
