using System.Collections.Immutable;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>What a key does: its keys, its words, whether it can be done now, and the doing.</summary>
internal abstract class EditorCommand
{
    /// <summary>In the order in which people reach for them; the first is the one that is shown.</summary>
    public abstract ImmutableArray<Key> Keys { get; }

    /// <summary>The first key as it is shown, e.g. `^S`.</summary>
    public abstract string KeyName { get; }

    /// <summary>What it does, for the page of keys.</summary>
    public abstract string Title { get; }

    /// <summary>One word for the line of keys; nothing where the line leaves it out.</summary>
    public virtual string? Hint => null;

    /// <summary>The keys as the line of keys shows them, where they are more than the first.</summary>
    public virtual string HintKey => KeyName;

    public abstract EditorMode Modes { get; }

    /// <summary>Whether it changes the schedule or leads to a form that does: not where the file is open to look only.</summary>
    public virtual bool Changes => false;

    /// <summary>Why it can do nothing now; nothing where it can.</summary>
    public virtual string? WhyNot(IEditor editor) => null;

    /// <summary>The same, a file that is open to look only regarded.</summary>
    public string? WhyNotNow(IEditor editor) => (Changes ? editor.Session.WhyNoEdit : null) ?? WhyNot(editor);

    public abstract void Run(IEditor editor);
}
