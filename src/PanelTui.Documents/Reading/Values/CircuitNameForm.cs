namespace PanelTui.Documents.Reading.Values;

/// <summary>
/// The id of a circuit as a scenario names it, or `all`; whether there is one is the scenario reader's question.
/// </summary>
internal sealed class CircuitNameForm() : ValueForm<string>("the id of a circuit")
{
    public override bool IsFreeText => true;

    public override Outcome<string> Read(string text) => text.Trim() is { Length: > 0 } id
        ? Outcome.Of(id)
        : Outcome.Refused<string>($"is {Quoted.Of(text)}; write {Words}");
}
