using System.Diagnostics;
using System.Globalization;
using PanelTui.CommandLine;
using PanelTui.Documents;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Intents;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Tests.Growth;
using PanelTui.Documents.Text;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;
using PanelTui.Engine.Panels;

namespace PanelTui.Benchmarks;

/// <summary>`-- large [WORD [SHARE]]`: the time of each command and each edit on each kind of large file, the median of three.</summary>
internal static class LargeFiles
{
    private const int Rounds = 3;

    public static void Run(string word, int share, string operation)
    {
        foreach (var file in LargeFile.All.Where(file => file.Name.Contains(word, StringComparison.Ordinal)))
        {
            var text = file.Text(file.Most / share);
            var snapshot = Snapshot.Of(SourceText.FromString(text));
            Console.WriteLine($"{file.Name}: {text.Length / 1024} KiB{(snapshot.HasErrors ? " CANNOT BE READ " + snapshot.Diagnostics[0].Message : "")}");
            foreach (var (name, act) in Operations(snapshot, text))
            {
                if (!name.Contains(operation, StringComparison.Ordinal)) continue;
                var times = new List<double>();
                var bytes = 0L;
                for (var round = 0; round < Rounds; round++)
                {
                    var before = GC.GetAllocatedBytesForCurrentThread();
                    var clock = Stopwatch.StartNew();
                    act();
                    times.Add(clock.Elapsed.TotalMilliseconds);
                    bytes = GC.GetAllocatedBytesForCurrentThread() - before;
                    if (times[0] > 5_000) break;
                }

                times.Sort();
                var median = times[times.Count / 2];
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {name,-34} {median,9:0} ms {bytes / 1048576.0,8:0.0} MB{(median > 1000 ? "  <<<<" : "")}"));
            }
        }
    }

    private static IEnumerable<(string Name, Action Act)> Operations(Snapshot snapshot, string text)
    {
        yield return ("read", () => Snapshot.Of(SourceText.FromString(text)));
        yield return ("check", () => Verb("check"));
        yield return ("check --json", () => Verb("check", "--json"));
        yield return ("calc", () => Verb("calc"));
        yield return ("calc --json", () => Verb("calc", "--json"));
        yield return ("run", () => Verb("run"));
        yield return ("transfer", () => Verb("transfer"));
        yield return ("print directory", () => Verb("print", "directory"));
        yield return ("print diagram svg", () => Verb("print", "diagram", "--format", "svg"));
        yield return ("diff --textconv", () => Verb("diff", "--textconv"));
        foreach (var (what, intent) in Intents(snapshot))
        {
            yield return (what, () =>
            {
                if (WhyNot(intent, snapshot) is { } why) Console.WriteLine($"  {what} is refused: {why}");
            });
        }

        var renamed = SetField.In(snapshot, Places.Circuit(1).Then("name"), "Pump of the well").After ?? snapshot;
        yield return ("diff", () => ScheduleChanges.Between(snapshot, renamed));
        yield return ("diff with nothing", () => ScheduleChanges.Between(Snapshot.Of(SourceText.FromString("")), snapshot));
        var moved = MoveCircuits.In(snapshot, [new(0, new SpaceNumber(3))]).After ?? snapshot;
        yield return ("merge", () => ScheduleMerge.Of(snapshot.Source, renamed.Source, moved.Source).Settled());

        void Verb(params string[] args)
        {
            var path = Path.Combine(Path.GetTempPath(), $"paneltui-large-{Environment.ProcessId}.panel.yaml");
            File.WriteAllText(path, text);
            var streams = new Streams(() => Stream.Null, TextWriter.Null, Console.Error);
            CommandLineRoot.Run([.. args, .. (string[])[path]], streams, (_, _, _) => 0);
            File.Delete(path);
        }
    }

    private static IEnumerable<(string Name, Func<Snapshot, Intended> Intent)> Intents(Snapshot snapshot)
    {
        yield return ("rename", now => SetField.In(now, Places.Circuit(1).Then("name"), "Pump of the well"));
        yield return ("add a key", now => SetField.In(now, Places.Circuit(1).Then("length"), "30 ft"));
        yield return ("clear a key", now => SetField.In(now, Places.Circuit(0).Then("name"), ""));
        yield return ("move", now => MoveCircuits.In(now, [new(1, new SpaceNumber(7))]));
        yield return ("move several", now => MoveCircuits.In(now, [new(0, new SpaceNumber(5)), new(1, new SpaceNumber(1))]));
        yield return ("add a circuit", now => AddCircuit.In(now, new NewCircuit([new("space", "8"), new("name", "New"), new("breaker", "20 A")], [])));
        yield return ("copy a circuit", now => CopyCircuit.In(now, now, 1, new SpaceNumber(8)));
        yield return ("remove a circuit", now => RemoveCircuit.In(now, 1));
        yield return ("remove both", now => RemoveCircuits.In(now, [0, 1]));
        yield return ("set loads", now => SetLoads.In(now, 1, [NewLoad.Of("lighting", "100 W")]));
        yield return ("add a load", now => AddLoad.In(now, 1, NewLoad.Of("lighting", "100 W")));
        yield return ("set a load's field", now => SetField.In(now, Places.Load(1, 0).Then("rating"), "1 hp"));
        yield return ("remove a load", now => RemoveLoad.In(now, 1, 0));
        yield return ("add a scenario", now => AddScenario.In(now, [new("name", "Night"), new("running", "all")]));
        yield return ("accept a finding", now => AddAcceptance.In(now, "directory-text-vague", "", "seen"));
        yield return ("insert in the list", now => Writing(now, YamlEditor.InsertItem(now.Tree!, Places.Circuits, 0, new NewMapping([new("space", new NewScalar("3", ScalarKind.Plain)), new("breaker", "20 A")]))));
        var top = snapshot.Tree!.Root!.Pairs.FirstOrDefault(pair => pair.Key.Value is "x" or "y" or "key_1" or "old_circuits");
        if (top is null) yield break;
        yield return ("remove the large part", now => Writing(now, YamlEditor.RemoveEntry(now.Tree!, YamlPath.Of(top.Key.Value))));
        if (!top.Value.IsSequence) yield break;
        var last = top.Value.Items.Length - 1;
        yield return ("remove the last", now => Writing(now, YamlEditor.RemoveItem(now.Tree!, YamlPath.Of(top.Key.Value), last)));
        yield return ("add a last", now => Writing(now, YamlEditor.InsertItem(now.Tree!, YamlPath.Of(top.Key.Value), last + 1, "more")));
    }

    private static string? WhyNot(Func<Snapshot, Intended> intent, Snapshot snapshot)
    {
        try
        {
            return intent(snapshot).Refusal;
        }
        catch (CannotEdit refusal)
        {
            return refusal.Message;
        }
    }

    private static Intended Writing(Snapshot now, TextChange change) =>
        new(change, Snapshot.Of(now.Source.WithText(change.ApplyTo(now.Source.Text))), null);
}
