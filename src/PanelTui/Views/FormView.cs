using System.Collections.Immutable;
using PanelTui.Editing;
using PanelTui.Presentation;
using PanelTui.Terminal;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace PanelTui.Views;

/// <summary>A form on one row: each label before its field. Enter sends, Tab walks, Esc gives up.</summary>
internal sealed class FormView : View
{
    private readonly List<TextField> _boxes = [];
    private Form? _form;

    public FormView()
    {
        CanFocus = true;
        Visible = false;
    }

    /// <summary>The texts of the fields, to be sent off.</summary>
    public event Action<Form, ImmutableArray<string>>? Sent;

    public event Action? GivenUp;

    /// <summary>A text or the focus has changed.</summary>
    public event Action<Form, ImmutableArray<string>>? Touched;

    /// <summary>The field that has the focus, from 0.</summary>
    public int Focus => Math.Max(0, _boxes.FindIndex(box => box.HasFocus));

    public ImmutableArray<string> Texts => [.. _boxes.Select(box => HiddenLetters.Back(box.Text))];

    public void Open(Form form, int columns)
    {
        Close();
        _form = form;
        Visible = true;
        var at = 0;
        foreach (var (field, width) in form.Fields.Zip(Widths(form.Fields, columns))) at = AddField(field, at, width);
        GoTo(0);
    }

    public void Close()
    {
        _form = null;
        Visible = false;
        foreach (var view in SubViews.ToList())
        {
            Remove(view);
            view.Dispose();
        }

        _boxes.Clear();
    }

    public void GoTo(int field)
    {
        _boxes[field].SetFocus();
        _boxes[field].SelectAll();
        Tell();
    }

    /// <summary>Back to a field that was refused: nothing in it is selected, so that typing mends it and replaces nothing.</summary>
    public void BackTo(int field)
    {
        _boxes[field].SetFocus();
        _boxes[field].ClearAllSelection();
        _boxes[field].MoveEnd();
    }

    protected override bool OnClearingViewport()
    {
        SetAttribute(Look.Plain);
        FillRect(Viewport with { X = 0, Y = 0 });
        return true;
    }

    /// <summary>Fixed widths as asked; the others share the rest.</summary>
    private static ImmutableArray<int> Widths(ImmutableArray<FormField> fields, int columns)
    {
        var labels = fields.Sum(field => field.Label.Length + 2);
        var rest = Math.Max(8, columns - labels - fields.Sum(field => field.Columns) - 1);
        var sharing = Math.Max(1, fields.Count(field => field.Columns == 0));
        return [.. fields.Select(field => field.Columns == 0 ? rest / sharing : field.Columns)];
    }

    private int AddField(FormField field, int at, int width)
    {
        var box = new TextField { X = at + field.Label.Length + 2, Y = 0, Width = width, Text = HiddenLetters.Shown(field.Value) };
        box.KeyBindings.Remove(Key.Enter);
        box.KeyDown += OnBoxKey;
        box.ValueChanged += (_, _) => OnValue(box);
        Add(new Label { X = at, Y = 0, Text = $" {field.Label}" }, box);
        _boxes.Add(box);
        return at + field.Label.Length + 2 + width;
    }

    /// <summary>A letter that cannot be seen, typed or pasted, is shown by its number.</summary>
    private void OnValue(TextField box)
    {
        if (HiddenLetters.Shown(box.Text) is var shown && shown != box.Text)
        {
            box.Text = shown;
            box.MoveEnd();
        }
        else
        {
            Tell();
        }
    }

    private void OnBoxKey(object? sender, Key key)
    {
        if (_form is not { } form) return;
        key.Handled = true;
        if (key == Key.Esc) GivenUp?.Invoke();
        else if (key == Key.Tab || key == Key.CursorDown) GoTo((Focus + 1) % _boxes.Count);
        else if (key == Key.Tab.WithShift || key == Key.CursorUp) GoTo((Focus + _boxes.Count - 1) % _boxes.Count);
        else if (key == Key.Enter && NextStep(form) is { } next) GoTo(next);
        else if (key == Key.Enter) Sent?.Invoke(form, Texts);
        else key.Handled = false;
    }

    private int? NextStep(Form form)
    {
        if (!form.StepByStep) return null;
        var next = Enumerable.Range(Focus + 1, _boxes.Count - Focus - 1).Where(field => !form.Fields[field].EnterPasses).ToList();
        return next.Count == 0 ? null : next[0];
    }

    private void Tell()
    {
        if (_form is { } form && _boxes.Count == form.Fields.Length) Touched?.Invoke(form, Texts);
    }
}
