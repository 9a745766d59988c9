using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Editing;
using PanelTui.Presentation;
using PanelTui.Views;

namespace PanelTui.Screens;

/// <summary>The form that is open below the face: sends it off, keeps it with the sentence where it is refused, gives it up.</summary>
internal sealed class FormDesk
{
    private readonly Session _session;
    private Form? _open;
    private string? _refusal;

    public FormDesk(Session session)
    {
        _session = session;
        View.Sent += (form, texts) => Send(form, texts, goesOn: false);
        View.SentOn += (form, texts) => Send(form, texts, goesOn: true);
        View.Refused += Refuse;
        View.GivenUp += () => End("");
        View.Moved += () => Changed?.Invoke();
        View.Overfilled += Overfilled;
        View.Touched += (form, texts) =>
        {
            _refusal = null;
            _session.Pace.Of("Working out the figures ...", () => form.Preview(_session, texts));
            Changed?.Invoke();
        };
    }

    /// <summary>What there is to show has changed.</summary>
    public event Action? Changed;

    /// <summary>The form is no longer there.</summary>
    public event Action? Closed;

    /// <summary>The form was taken: with Tab the next one is wanted.</summary>
    public event Action<bool>? Taken;

    public FormView View { get; } = new();

    public void Open(Form form, int columns)
    {
        _open = form;
        _refusal = null;
        View.Open(form, columns);
    }

    /// <summary>The rows below the fields.</summary>
    public ImmutableArray<ImmutableArray<TextRun>> Rows(int columns) =>
        FormText.Below(_open!.Fields[View.Focus], _refusal, View.Offers, View.Texts[View.Focus], columns);

    public ImmutableArray<TextRun> Keys(int columns) => FormText.Keys(View.Keys, columns);

    private void Send(Form form, ImmutableArray<string> texts, bool goesOn)
    {
        if (_session.Pace.Of("Applying the change ...", () => form.Send(_session, texts)) is { } refusal)
        {
            Refuse(refusal);
            return;
        }

        End(_session.Message);
        Taken?.Invoke(goesOn);
    }

    private void Refuse(FormRefusal refusal)
    {
        View.BackTo(refusal.Field, refusal.Instead);
        _refusal = refusal.Reason;
        Changed?.Invoke();
    }

    /// <summary>The text stays as it was, and what is selected in it.</summary>
    private void Overfilled(int length)
    {
        var refusal = string.Create(
            CultureInfo.InvariantCulture,
            $"a field holds {MarkedTextField.Longest:N0} characters at most, and this would make {length:N0}: nothing was put in");
        if (refusal == _refusal) return;
        _refusal = refusal;
        Changed?.Invoke();
    }

    private void End(string message)
    {
        View.Close();
        _open = null;
        Closed?.Invoke();
        _session.EndPreview();
        _session.Say(message);
    }
}
