using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Reading;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>Long sessions of random intents, each on what the ones before have left.</summary>
public class RandomIntentTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Whatever_is_done_the_file_can_be_read_and_undo_brings_back_each_text(int seed)
    {
        var dice = new Dice(seed);
        var snapshot = Schedules.Snapshot(dice.One(2) ? Schedules.EveryKey : Shed.Text);
        var made = 0;
        for (var step = 0; step < 150; step++)
        {
            var intended = Any(snapshot, dice);
            if (!intended.IsPossible) continue;
            made++;
            var before = snapshot.Source.Text;
            snapshot = intended.After;
            intended.Change.ApplyTo(before).ShouldBe(snapshot.Source.Text);
            intended.Change.Inverse(before).ApplyTo(snapshot.Source.Text).ShouldBe(before);
            snapshot.HasErrors.ShouldBeFalse(intended.Change.Title);
        }

        made.ShouldBeGreaterThan(50);
    }

    private static Intended Any(Snapshot snapshot, Dice dice)
    {
        var circuit = dice.Next(6);
        return dice.Next(12) switch
        {
            0 => AddCircuit.In(snapshot, NewCircuit.Of(Space(dice), "20 A", dice.Any(["Bench", "Fan: north", "no"]))),
            1 => RemoveCircuit.In(snapshot, circuit),
            2 => MoveCircuits.In(snapshot, [new Hop(circuit, Space(dice))]),
            3 => MoveCircuits.In(snapshot, [new Hop(circuit, Space(dice)), new Hop(dice.Next(6), Space(dice))]),
            4 => AddLoad.In(snapshot, circuit, NewLoad.Of(dice.Any(["motor", "receptacle"]), dice.Any(["1 hp", ""]))),
            5 => RemoveLoad.In(snapshot, circuit, dice.Next(2)),
            6 => AddScenario.In(snapshot, dice.Any(["Night", "Dawn", "Storm"])),
            7 => RemoveScenario.In(snapshot, dice.Next(3)),
            8 => CopyScenario.In(snapshot, dice.Next(3)),
            9 => CopyLoad.In(snapshot, circuit, dice.Next(2)),
            10 => RemoveCircuits.In(snapshot, [circuit, dice.Next(6)]),
            _ => Field(snapshot, dice),
        };
    }

    private static Intended Field(Snapshot snapshot, Dice dice)
    {
        var (path, text) = Mutation.OfField(dice);
        return SetField.In(snapshot, path, text);
    }

    private static SpaceNumber Space(Dice dice) => new(dice.Next(1, 20));
}
