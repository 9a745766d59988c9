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
        the section it rests on by edition, and how well that stands. Words that are no
        rule's name list every rule that has all of them in its name, summary, reason,
        advice or section.

        Usage:
          paneltui rules [NAME | WORD...] [--json]

        Examples:
          paneltui rules
          paneltui rules neutral-bonded-twice
          paneltui rules generator neutral
          paneltui rules 702.4

        Exit codes: 0 printed, 2 no rule has these words.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var words = new Argument<string[]>("WORD")
        {
            Arity = ArgumentArity.ZeroOrMore, Description = "a rule, as check names it in brackets, or words to search for",
        };
        var json = JsonOption();
        words.CompletionSources.Add([.. RuleBook.All.Select(rule => rule.Name)]);
        command.Add(words);
        command.Add(json);
        command.SetAction(parsed => Print(parsed.GetValue(words) ?? [], parsed.GetValue(json), streams));
    }

    private int Print(string[] words, bool asJson, Streams streams)
    {
        var named = words is [var name] ? RuleBook.Find(name) : null;
        var found = named is null ? RuleSearch.Of(words) : [named];
        if (found.IsEmpty) return Misuse(streams, NothingFound(words));
        if (asJson) streams.Out.WriteLine(RulesJson.Of(found));
        else foreach (var line in named is null ? RuleText.List(found) : RuleText.Of(named)) streams.Out.WriteLine(line);
        return ExitCode.Clean;
    }

    private static string NothingFound(string[] words)
    {
        var ending = DidYouMean.Ending(string.Join('-', words), RuleBook.All.Select(rule => rule.Name));
        return words is [var word]
            ? $"there is no rule '{word}', and no rule has that word{ending} 'paneltui rules' lists all of them."
            : $"no rule has all of {string.Join(", ", words.Select(one => $"'{one}'"))}{ending} 'paneltui rules' lists all of them.";
    }
}
