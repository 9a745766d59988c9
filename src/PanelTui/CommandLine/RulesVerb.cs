using System.CommandLine;
using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui rules [NAME]`: what check looks at, or one rule in full.</summary>
internal sealed class RulesVerb : Verb
{
    public override string Name => "rules";

    public override string Summary => "what check looks at, or one rule in full";

    public override string Page => """
        List the rules that check goes by, or explain one: why it matters, what to do,
        the section it rests on by edition, and how well that stands.

        Usage:
          paneltui rules [NAME]

        Examples:
          paneltui rules
          paneltui rules neutral-bonded-twice

        Exit codes: 0 printed, 2 there is no such rule.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var name = new Argument<string?>("NAME")
        {
            Arity = ArgumentArity.ZeroOrOne, Description = "a rule, as check names it in brackets",
        };
        name.CompletionSources.Add([.. RuleBook.All.Select(rule => rule.Name)]);
        command.Add(name);
        command.SetAction(parsed => Print(parsed.GetValue(name), streams));
    }

    private static int Print(string? name, Streams streams)
    {
        if (name is not null && RuleBook.Find(name) is null)
        {
            var ending = DidYouMean.Ending(name, RuleBook.All.Select(rule => rule.Name));
            return streams.Refuse($"paneltui: there is no rule {name}{ending} `paneltui rules` lists them.");
        }

        foreach (var line in name is null ? RuleText.List() : RuleText.Of(RuleBook.Find(name)!)) streams.Out.WriteLine(line);
        return ExitCode.Clean;
    }
}
