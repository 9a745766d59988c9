using System.Collections.Immutable;
using PanelTui.Engine.Rules;

namespace PanelTui.Documents.Reading.Values;

/// <summary>The name of a rule. One that this version does not have is kept, since a later one may have it.</summary>
internal sealed class RuleNameForm() : ValueForm<string>("the name of a rule, as check prints it")
{
    public override ImmutableArray<string> Allowed { get; } = [.. RuleBook.All.Select(rule => rule.Name)];

    public override bool IsFreeText => true;

    public override Outcome<string> Read(string text) => text.Trim() is { Length: > 0 and <= Limits.IdLength } name
        ? Outcome.Of(name)
        : Outcome.Refused<string>($"is {Quoted.Of(text)}; write {Words}");
}
