using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Balance;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>Puts a plan into the file: nothing but the spaces of what is moved changes, and the file is never half written.</summary>
internal static class BalanceWriting
{
    /// <summary>Why nothing was written; nothing on success.</summary>
    public static string? Write(string path, BalanceFrontier frontier, BalancePlan plan)
    {
        if (plan.Moves == 0) return null;
        try
        {
            var file = ScheduleFile.Load(path);
            var snapshot = Snapshot.Of(file.Source);
            if (snapshot.Schedule is null || !HasSameSpaces(snapshot, frontier)) return $"{path} was changed while the plan was made; nothing was written.";
            if (BalanceCheck.WhyNot(snapshot.Schedule, plan.Hops) is { } reason) return $"{path}: {reason}";
            var done = MoveCircuits.In(snapshot, plan.Hops, BalanceWords.Title(plan, frontier.Now));
            if (!done.IsPossible) return $"{path}: {done.Refusal}";
            ScheduleFile.Save(path, done.After.Source, file.State);
            return null;
        }
        catch (FileProblem problem)
        {
            return problem.Message;
        }
        catch (YamlProblem problem)
        {
            return problem.Message;
        }
    }

    private static bool HasSameSpaces(Snapshot snapshot, BalanceFrontier frontier) => snapshot.Schedule!.Circuits
        .Select(circuit => (circuit.Id, circuit.Name, circuit.Space))
        .SequenceEqual(frontier.Schedule.Circuits.Select(circuit => (circuit.Id, circuit.Name, circuit.Space)));
}
