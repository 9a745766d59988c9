using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Reading;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>A short file of an invented shed, and what an intent makes of it.</summary>
internal static class Shed
{
    public const string Text =
        """
        schedule: 1   # the format
        panel:
          system: 120/240 V 1ph 3W
          spaces: 20
          bus: 125 A    # from the label
        circuits:
          # by the door
          - id: lights
            space: 1
            name: Sorting lights
            breaker: 15 A
            loads:
              - {kind: lighting, rating: 480 W}

          - id: pump
            space: 6
            name: Well pump
            breaker: 20 A
            poles: 2
            loads:
              - {kind: motor, rating: 1 hp}
        scenarios:
          - name: Night
            running: [lights, pump]
            starting: pump

        """;

    public static Snapshot Snapshot { get; } = Schedules.Snapshot(Text);

    /// <summary>The lines that went and came, as `- old` and `+ new`, in order.</summary>
    public static string Difference(Intended intended)
    {
        var after = intended.After.ShouldNotBeNull(intended.Refusal).Source.Text;
        intended.Change.ShouldNotBeNull().ApplyTo(Text).ShouldBe(after);
        intended.Change.Inverse(Text).ApplyTo(after).ShouldBe(Text);
        return Difference(Text.Split('\n'), after.Split('\n'));
    }

    private static string Difference(string[] before, string[] after)
    {
        var head = before.Zip(after).TakeWhile(pair => pair.First == pair.Second).Count();
        var most = Math.Min(before.Length, after.Length) - head;
        var ends = before.Reverse().Zip(after.Reverse()).Take(most);
        var tail = ends.TakeWhile(pair => pair.First == pair.Second).Count();
        var gone = before[head..^tail].Select(line => $"- {line}".TrimEnd());
        var come = after[head..^tail].Select(line => $"+ {line}".TrimEnd());
        return string.Join('\n', gone.Concat(come));
    }
}
