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
    private readonly List<MarkedTextField> _boxes = [];
    private Form? _form;

    /// <summary>What was typed into the field, before a value was chosen in its place.</summary>
    private string _stem = "";
    private bool _isChoosing;

    public FormView()
    {
        CanFocus = true;
        Visible = false;
    }

    /// <summary>The texts of the fields, to be sent off.</summary>
    public event Action<Form, ImmutableArray<string>>? Sent;

    /// <summary>A form of one field is to be sent off, and the next one opened.</summary>
    public event Action<Form, ImmutableArray<string>>? SentOn;

    /// <summary>The form does not go on from a field whose text cannot stand.</summary>
    public event Action<FormRefusal>? Refused;

    public event Action? GivenUp;

    /// <summary>A text or the focus has changed.</summary>
    public event Action<Form, ImmutableArray<string>>? Touched;

    /// <summary>The cursor has moved within a field, or what was selected is no longer.</summary>
    public event Action? Moved;

    /// <summary>A text was not put in, since the field would hold so many characters.</summary>
    public event Action<int>? Overfilled;

    /// <summary>What the keys do in the field that has the focus.</summary>
    public FormKeys Keys => new(
        EnterGoesOn: _form is { } form && NextStep(form) is not null,
        TabCompletes: Completion is not null,
        Tab: _boxes.Count > 1 ? "next field" : _form?.OnwardByTab,
        HasOffers: !Offers.IsEmpty,
        TypingReplaces: _boxes[Focus].IsReplaced);

    /// <summary>The field that has the focus, from 0.</summary>
    public int Focus => Math.Max(0, _boxes.FindIndex(box => box.HasFocus));

    public ImmutableArray<string> Texts => [.. _boxes.Select(box => HiddenLetters.Back(box.Text))];

    /// <summary>The values to choose from in the field that has the focus, for what was typed into it.</summary>
    public ImmutableArray<string> Offers => _form is { } form && _boxes.Count > 0 ? form.Fields[Focus].Offers?.Invoke(_stem) ?? [] : [];

    public void Open(Form form, int columns)
    {
        Close();
        _form = form;
        Visible = true;
        var at = 0;
        foreach (var (field, width) in form.Fields.Zip(Widths(form.Fields, columns))) at = AddField(field, at, width);
        GoTo(0);
        if (form.Fields[0].Begun is { } begun) BackTo(0, begun);
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
        _stem = "";
        Tell();
    }

    /// <summary>Back to a field that was refused: nothing in it is selected, so that typing mends it and replaces nothing.</summary>
    public void BackTo(int field, string? text = null)
    {
        _boxes[field].SetFocus();
        if (text is not null) _boxes[field].Text = HiddenLetters.Shown(text);
        _boxes[field].GoOn();
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
        var box = new MarkedTextField { X = at + field.Label.Length + 2, Y = 0, Width = width, Text = HiddenLetters.Shown(field.Value) };
        box.KeyBindings.Remove(Key.Enter);
        box.KeyDown += OnBoxKey;
        box.ValueChanged += (_, _) => OnValue(box);
        box.Overfilled += length => Overfilled?.Invoke(length);
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
            if (!_isChoosing) _stem = HiddenLetters.Back(shown);
            Tell();
        }
    }

    private void OnBoxKey(object? sender, Key key)
    {
        if (_form is not { } form || sender is not MarkedTextField box) return;
        key.Handled = true;
        if (key == Key.Esc) GivenUp?.Invoke();
        else if (key == Key.CursorDown && Choose(1)) return;
        else if (key == Key.CursorUp && Choose(-1)) return;
        else if (key == Key.Tab && Completion is { } whole) Put(whole);
        else if (key == Key.Tab && form.OnwardByTab is not null) SentOn?.Invoke(form, Texts);
        else if (key == Key.Tab || key == Key.CursorDown) GoTo((Focus + 1) % _boxes.Count);
        else if (key == Key.Tab.WithShift || key == Key.CursorUp) GoTo((Focus + _boxes.Count - 1) % _boxes.Count);
        else if (key == Key.Enter && NextStep(form) is { } next) Step(form, next);
        else if (key == Key.Enter) Sent?.Invoke(form, Texts);
        else if (!Edit(box, key)) Pass(box, key);
    }

    /// <summary>The keys that take text away, as on a command line, and the one that keeps what typing would replace.</summary>
    private bool Edit(MarkedTextField box, Key key)
    {
        if (key == Key.U.WithCtrl) box.TakeBefore();
        else if (key == Key.K.WithCtrl) box.TakeAfter();
        else if (key == Key.W.WithCtrl) box.TakeWord();
        else if (key == Key.CursorRight && box.IsReplaced) box.GoOn();
        else return false;
        Moved?.Invoke();
        return true;
    }

    /// <summary>Leaves the key to the field; where it ends a selection without changing the text, that is told, too.</summary>
    private void Pass(MarkedTextField box, Key key)
    {
        key.Handled = box.IsReplaced && box.KeyBindings.TryGet(key, out _);
        if (!key.Handled) return;
        foreach (var command in box.KeyBindings.GetCommands(key)) box.InvokeCommand(command);
        Moved?.Invoke();
    }

    /// <summary>Puts the next of the offered values into the field; whether there are any.</summary>
    private bool Choose(int by)
    {
        var offers = Offers;
        if (offers.IsEmpty) return false;
        var at = offers.IndexOf(Texts[Focus]);
        Put(offers[at < 0 ? (by > 0 ? 0 : offers.Length - 1) : (at + by + offers.Length) % offers.Length]);
        return true;
    }

    /// <summary>The value that was begun, whole; nothing where there is none to finish.</summary>
    private string? Completion
    {
        get
        {
            var begun = Texts[Focus];
            if (begun.Length == 0 || Offers is not [var first, ..] || Offers.Contains(begun)) return null;
            return first.Length > begun.Length && first.StartsWith(begun, StringComparison.OrdinalIgnoreCase) ? first : null;
        }
    }

    private void Put(string value)
    {
        _isChoosing = true;
        _boxes[Focus].Text = HiddenLetters.Shown(value);
        _boxes[Focus].GoOn();
        _isChoosing = false;
    }

    private void Step(Form form, int next)
    {
        if (form.WhyNot(Focus, Texts[Focus]) is { } refusal) Refused?.Invoke(refusal);
        else GoTo(next);
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
