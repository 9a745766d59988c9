using System.Text;
using PanelTui.Presentation;
using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Views;

/// <summary>
/// A field in which a text that is longer than the field shows where it goes on, a paste is one edit, and the keys
/// that take text away are those of a command line.
/// </summary>
internal sealed class MarkedTextField : TextField
{
    /// <summary>Characters of a field: more than any value of the format, few enough for each key to be answered at once.</summary>
    public const int Longest = 2_000;

    /// <summary>A text was not put in, since the field would hold so many characters.</summary>
    public event Action<int>? Overfilled;

    /// <summary>Whether all there is will give way to what is typed.</summary>
    public bool IsReplaced => SelectedLength > 0 && SelectedText == Text;

    /// <summary>Takes away what stands before the cursor, or all where all is selected.</summary>
    public void TakeBefore() => Keep("", IsReplaced ? "" : After);

    /// <summary>Takes away what stands after the cursor, or all where all is selected.</summary>
    public void TakeAfter() => Keep(IsReplaced ? "" : Before, "");

    /// <summary>Takes away the word before the cursor and the blanks between them.</summary>
    public void TakeWord()
    {
        var rest = Before.TrimEnd();
        Keep(rest[..(rest.LastIndexOf(' ') + 1)], After);
    }

    /// <summary>The cursor after the text, nothing selected: what is typed goes on.</summary>
    public void GoOn()
    {
        ClearAllSelection();
        MoveEnd();
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var drawn = base.OnDrawingContent(context);
        if (ScrollOffset > 0) Mark(0);
        if (Text.Length - ScrollOffset > Viewport.Width) Mark(Viewport.Width - 1);
        return drawn;
    }

    /// <summary>All of it on one line; a letter that cannot be seen by its number, as the field shows it.</summary>
    protected override string OnSanitizingPaste(string raw)
    {
        if (raw.Length > Longest) return raw;
        return HiddenLetters.Shown(string.Join(' ', raw.Split(['\r', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries)));
    }

    protected override bool OnPaste(string text) => !HasRoomFor(text.Length) || base.OnPaste(text);

    protected override bool OnKeyDownNotHandled(Key key) =>
        (key.AsRune is { Value: >= ' ' } && !key.IsCtrl && !key.IsAlt && !HasRoomFor(1)) || base.OnKeyDownNotHandled(key);

    private string Before => string.Concat(TextElement.Split(Text).Take(InsertionPoint).Select(element => element.Text));

    private string After => string.Concat(TextElement.Split(Text).Skip(InsertionPoint).Select(element => element.Text));

    private bool HasRoomFor(int letters)
    {
        var length = Text.Length - (SelectedText?.Length ?? 0) + letters;
        if (length <= Longest) return true;
        Overfilled?.Invoke(length);
        return false;
    }

    private void Keep(string before, string after)
    {
        ClearAllSelection();
        if (before.Length + after.Length == Text.Length) return;
        Text = before + after;
        InsertionPoint = TextElement.Split(before).Count();
    }

    private void Mark(int column)
    {
        SetAttributeForRole(HasFocus ? VisualRole.Focus : VisualRole.Normal);
        AddRune(column, 0, new Rune('…'));
    }
}
