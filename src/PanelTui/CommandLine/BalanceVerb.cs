using System.CommandLine;
using System.Globalization;
using PanelTui.Engine.Balance;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui balance FILE`: which breakers to move, fewest first.</summary>
internal sealed class BalanceVerb : Verb
{
    public override string Name => "balance";

    public override string Summary => "which breakers to move for even legs, fewest moves first";

    protected override bool Writes => true;

    public override string Page => """
        Find the fewest moves that make the legs more even, with proof: the best with
        one move, with two, and so on. What has several poles, shares a neutral or sits
        in a tandem keeps its rules; what is marked fixed: yes stays.

        Usage:
          paneltui balance FILE [--moves N] [--by WHAT] [--seconds N] [--json]
                           [--write [--dry-run]]

        Examples:
          paneltui balance shed.panel.yaml
          paneltui balance shed.panel.yaml --moves 2 --by scenario 'Harvest night'
          paneltui balance shed.panel.yaml --moves 2 --write

        WHAT: connected (the default), demand, worst (the most uneven scenario), or
        scenario NAME. Without --moves the best plan of all is shown.
        --write changes the spaces in FILE and nothing else; the panel itself is yours.
        Exit codes: 0 done, 2 the file cannot be read or written, or WHAT is not in it.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string?>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "a schedule; - for standard input" };
        var moves = new Option<int?>("--moves") { Description = "a number of moves" };
        var by = new Option<string[]>("--by") 
        {
            Arity = new ArgumentArity(1, 2), AllowMultipleArgumentsPerToken = true, Description = "connected, demand, worst or scenario NAME",
        };
        var seconds = new Option<double?>("--seconds") { Description = "a number of seconds to look for proof" };
        var json = JsonOption();
        var write = new Option<bool>("--write") { Description = "write the plan's spaces into the file" };
        command.Add(file);
        foreach (var option in (Option[])[moves, by, seconds, json, write]) command.Add(option);
        command.SetAction(parsed =>
        {
            var words = parsed.GetValue(by) ?? [];
            var last = words is [not "scenario", var second] ? second : null;
            var named = parsed.GetValue(file);
            var wanted = new BalanceRequest(
                named ?? last, words is ["scenario", var name] ? name : null, words.FirstOrDefault("connected"), named is null ? null : last,
                parsed.GetValue(moves), parsed.GetValue(seconds) ?? 1, parsed.GetValue(json), parsed.GetValue(write), streams.WritesNothing);
            return Run(wanted, streams);
        });
    }

    private int Run(BalanceRequest wanted, Streams streams)
    {
        if (wanted.WhyNot is { } refused) return Misuse(streams, refused);
        if (AssessedFile.Read(wanted.File!, streams) is not { } assessment) return ExitCode.Unusable;
        if (BalanceGauge.WhyNot(assessment.Schedule, wanted.By) is { } reason) return streams.Refuse(reason);
        var frontier = Search(assessment.Schedule, wanted);
        var plan = frontier.AtMost(wanted.Moves ?? int.MaxValue);
        var refusal = wanted is { Write: true, IsDryRun: false } ? BalanceWriting.Write(wanted.File!, frontier, plan) : null;
        if (refusal is not null) return streams.Refuse(refusal);
        if (wanted.AsJson) streams.Out.WriteLine(BalanceJson.Of(frontier, plan, wanted is { Write: true, IsDryRun: false } && plan.Moves > 0));
        else foreach (var line in Lines(frontier, plan, wanted)) streams.Out.WriteLine(line);
        return ExitCode.Clean;
    }

    private static IEnumerable<string> Lines(BalanceFrontier frontier, BalancePlan plan, BalanceRequest wanted)
    {
        foreach (var line in BalanceText.Of(frontier, plan)) yield return line;
        if (plan.Moves == 0) yield break;
        yield return "";
        yield return DisplayText.Clean(wanted switch
        {
            { Write: true, IsDryRun: true } => $"Would write {wanted.File}: {BalanceWords.Moves(plan.Moves)}; nothing has been written.",
            { Write: true } => $"Wrote {wanted.File}: {BalanceWords.Moves(plan.Moves)}. The panel itself has yet to follow.",
            _ => $"Nothing was written; --moves {plan.Moves.ToString(CultureInfo.InvariantCulture)} --write puts this plan into the file.",
        });
    }

    private static BalanceFrontier Search(Schedule schedule, BalanceRequest wanted)
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(wanted.Seconds));
        return BalanceSearch.Of(schedule, wanted.By, null, stop.Token);
    }
}
