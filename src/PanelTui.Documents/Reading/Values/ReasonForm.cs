namespace PanelTui.Documents.Reading.Values;

/// <summary>Why something is let stand, on one line: nothing is not a reason.</summary>
internal sealed class ReasonForm() : ValueForm<string>("a reason in words")
{
    public override bool IsFreeText => true;

    public override Outcome<string> Read(string text) => string.IsNullOrWhiteSpace(text)
        ? Outcome.Refused<string>($"is empty; write {Words}")
        : Forms.Text.Read(text);
}
