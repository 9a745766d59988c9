using System.Collections.Immutable;
using System.Text;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>A circuit as the hidden truth knows it: its number tells who it is, whatever the file says.</summary>
internal sealed record TrueCircuit(int Number, int Space, string Name, int Breaker, int Watts, string? Note);

/// <summary>A schedule as facts, and the file that somebody would write of it.</summary>
internal sealed record Truth(int Bus, ImmutableArray<TrueCircuit> Circuits)
{
    public static Truth Of(Dice dice)
    {
        var count = dice.Next(3, 12);
        return new(100, [.. Enumerable.Range(0, count).Select(number => New(dice, number, number + 1))]);
    }

    public static TrueCircuit New(Dice dice, int number, int space) =>
        new(number, space, $"Circuit {number}", 15 + (5 * dice.Next(2)), 100 * dice.Next(1, 9), dice.One(3) ? $"note {number}" : null);

    /// <summary>A few changes by one person; new circuits take the given spaces and numbers.</summary>
    public Truth Changed(Dice dice, int fresh)
    {
        var truth = this;
        var changes = dice.Next(1, 4);
        for (var change = 0; change < changes; change++) truth = truth.OneChange(dice, fresh + change);
        return truth;
    }

    public string Yaml(bool withIds, bool inBraces)
    {
        var text = new StringBuilder($"schedule: 1\npanel:\n  system: 120/240 V 1ph 3W\n  spaces: 84\n  bus: {Bus} A\ncircuits:\n");
        foreach (var circuit in Circuits)
        {
            if (circuit.Note is { } note) text.Append($"  # {note}\n");
            var id = withIds ? $"c{circuit.Number}" : null;
            text.Append(inBraces ? Braces(circuit, id) : Lines(circuit, id));
        }

        return text.ToString();
    }

    private static string Braces(TrueCircuit circuit, string? id) =>
        $"  - {{{(id is null ? "" : $"id: {id}, ")}space: {circuit.Space}, name: {circuit.Name}, breaker: {circuit.Breaker} A, "
        + $"loads: [{{kind: other, rating: {circuit.Watts} W}}]}}\n";

    private static string Lines(TrueCircuit circuit, string? id) =>
        $"  - {(id is null ? "" : $"id: {id}\n    ")}space: {circuit.Space}\n    name: {circuit.Name}\n    breaker: {circuit.Breaker} A\n"
        + $"    loads:\n      - {{kind: other, rating: {circuit.Watts} W}}\n";

    private Truth OneChange(Dice dice, int fresh)
    {
        if (Circuits.IsEmpty || dice.One(8)) return this with { Circuits = Circuits.Insert(dice.Next(Circuits.Length + 1), New(dice, fresh, fresh)) };
        var at = dice.Next(Circuits.Length);
        var circuit = Circuits[at];
        return dice.Next(8) switch
        {
            0 => this with { Bus = 100 + (25 * dice.Next(4)) },
            1 => this with { Circuits = Circuits.RemoveAt(at) },
            2 => this with { Circuits = Circuits.RemoveAt(at).Insert(dice.Next(Circuits.Length), circuit) },
            3 => With(at, circuit with { Space = dice.Next(20, 40) }),
            4 => With(at, circuit with { Name = $"Renamed {fresh}" }),
            5 => With(at, circuit with { Note = $"note {fresh}" }),
            6 => With(at, circuit with { Watts = 100 * dice.Next(1, 30) }),
            _ => With(at, circuit with { Breaker = 15 + (5 * dice.Next(4)) }),
        };
    }

    private Truth With(int at, TrueCircuit circuit) => this with { Circuits = Circuits.SetItem(at, circuit) };
}
