using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Reading;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>One value for many circuits is written at once, and as if each had been given it alone.</summary>
public class ManyValuesTests
{
    private static readonly (string Key, string Text)[] Values =
    [
        ("breaker", "20 A"), ("breaker", "25A"), ("priority", "2"), ("name", "Shed: east"), ("name", "no"), ("name", "plain"), ("wire", "12 copper"), ("length", "9'"),
        ("standby", "no"), ("protection", "GFCI"), ("verified", "2026-11-25"), ("poles", "1"), ("places", "garage, outdoors"), ("standby", ""),
    ];

    private static readonly string[] Files = [Schedules.EveryKey, Shed.Text, Shed.Text.Replace("\n", "\r\n", StringComparison.Ordinal), Shed.Text.TrimEnd()];

    [Fact]
    public void It_is_written_as_one_after_the_other_and_undo_gives_the_file_back()
    {
        foreach (var text in Files)
        {
            var snapshot = Schedules.Snapshot(text);
            var circuits = Enumerable.Range(0, snapshot.Schedule!.Circuits.Length).Select(Places.Circuit).ToList();
            foreach (var (key, value) in Values)
            {
                var alone = InOrder.Of(snapshot, "", circuits.Select(circuit => (Func<Snapshot, Intended>)(now => SetField.In(now, circuit.Then(key), value))));
                var together = SetField.In(snapshot, "", [.. circuits.Select(circuit => (circuit.Then(key), value))]);
                together.Refusal.ShouldBe(alone.Refusal, $"{key} {value}");
                if (!together.IsPossible) continue;
                together.After.Source.Text.ShouldBe(alone.After!.Source.Text, $"{key} {value}");
                together.Change.Inverse(text).ApplyTo(together.After.Source.Text).ShouldBe(text);
            }
        }
    }

    [Fact]
    public void A_value_that_repeats_another_one_gets_its_own_as_when_it_is_set_alone()
    {
        var text = Shed.Text.Replace("breaker: 15 A", "breaker: &rating 15 A", StringComparison.Ordinal).Replace("breaker: 20 A", "breaker: *rating", StringComparison.Ordinal);
        text.ShouldContain("*rating");
        var done = SetField.In(Schedules.Snapshot(text), "", (Places.Circuit(0).Then("breaker"), "30 A"), (Places.Circuit(1).Then("breaker"), "30 A"));
        done.After.ShouldNotBeNull(done.Refusal).Source.Text.ShouldBe(
            text.Replace("&rating 15 A", "&rating 30 A", StringComparison.Ordinal).Replace("*rating", "30 A", StringComparison.Ordinal));
    }
}
