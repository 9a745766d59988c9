using System.Collections.Immutable;

namespace PanelTui.Documents.Tests.Merging.Campaign;

/// <summary>What people do to a schedule. Each edit knows whom it is done to; the file may not tell.</summary>
internal sealed class HiddenEdits(Dice dice, int side)
{
    private static readonly string[] Things =
        ["Saw", "Lathe", "Bench", "Freezer", "Sump", "Gate", "Kiln", "Pump", "Office", "Porch", "Attic", "Dryer", "Oven", "Barn", "Shop", "Yard"];

    private static readonly string[] Kinds = ["lighting", "motor", "appliance", "space-heat", "other", "cooling"];

    public static readonly ImmutableArray<string> All =
    [
        "replace", "swap names", "swap spaces", "move", "resize", "rename", "add", "remove", "wire", "length", "rating", "add load", "replace load",
        "duty", "scenario", "rename scenario", "swap scenario names", "note", "reorder", "id", "bus", "spaces", "poles", "move and rename", "spare",
    ];

    private int _made;

    /// <param name="trouble">True to add a breaker with a value that cannot be read.</param>
    public static HiddenSchedule Begin(Dice dice, bool withIds, bool trouble)
    {
        var edits = new HiddenEdits(dice, 0);
        var circuits = Enumerable.Range(0, dice.Next(4, 10))
            .Select(index => edits.New(index + 1) with { Name = Things[index], Id = withIds && !dice.One(10) ? $"c{index}" : null })
            .ToImmutableArray();
        if (trouble) circuits = circuits.Add(Chest(dice, withIds));
        var named = circuits.Where(circuit => circuit.Id is not null).Select(circuit => circuit.Number).ToImmutableArray();
        ImmutableArray<HiddenScenario> scenarios = named.Length < 3 ? [] :
        [
            new(1, "Night", [named[0], named[1]]),
            new(2, "Day", [named[^1]]),
        ];
        return new("100 A", 24, circuits, scenarios);
    }

    /// <summary>Two to four things that one person does; what would leave two breakers in one space is not done.</summary>
    public (HiddenSchedule Now, ImmutableArray<string> Done) Several(HiddenSchedule was)
    {
        var (now, done) = (was, ImmutableArray.CreateBuilder<string>());
        for (var left = dice.Next(1, 4); left > 0; left--)
        {
            var edit = dice.Any(All);
            var next = Do(edit, now);
            if (!next.IsSound) continue;
            now = next;
            done.Add(edit);
        }

        return (now, done.ToImmutable());
    }

    private HiddenSchedule Do(string edit, HiddenSchedule now)
    {
        if (now.Circuits.Length < 2) return Added(now);
        var one = dice.Any(now.Circuits);
        var two = dice.Any(now.Circuits);
        return edit switch
        {
            "replace" => Replaced(now, one),
            "swap names" => now.With(one with { Name = two.Name }).With(two with { Name = one.Name }),
            "swap spaces" => now.With(one with { Space = two.Space }).With(two with { Space = one.Space }),
            "move" => now.With(one with { Space = FreeSpace(now) }),
            "resize" => now.With(one with { Breaker = $"{dice.Next(3, 8) * 5} A" }),
            "rename" => now.With(one with { Name = FreshName() }),
            "add" => Added(now),
            "remove" => Removed(now, one),
            "wire" => now.With(one with { Wire = dice.One(5) ? null : $"{dice.Any([14, 12, 10, 8])} AWG Cu" }),
            "length" => now.With(one with { Length = dice.One(5) ? null : $"{dice.Next(2, 12) * 5} ft" }),
            "rating" => Load(now, one, load => load with { Rating = Rating() }),
            "duty" => Load(now, one, load => load with { Duty = $"{dice.Next(1, 9) * 10} %" }),
            "add load" => now.With(one with { Loads = one.Loads.Add(NewLoad(one)) }),
            "replace load" => Load(now, one, load => NewLoad(one)),
            "scenario" => Scenario(now, scenario => scenario with { Running = Toggled(now, scenario.Running) }),
            "rename scenario" => Scenario(now, scenario => scenario with { Name = $"Plan {Fresh()}" }),
            "swap scenario names" when now.Scenarios is [var first, var second] =>
                now with { Scenarios = [first with { Name = second.Name }, second with { Name = first.Name }] },
            "swap scenario names" => now,
            "note" => now.With(one with { Note = $"note {Fresh()}" }),
            "reorder" => now with { Circuits = now.Circuits.Remove(one).Insert(dice.Next(now.Circuits.Length), one) },
            "id" => one.Id is null ? now.With(one with { Id = $"n{Fresh()}" }) : now,
            "bus" => now with { Bus = $"{100 + (25 * dice.Next(1, 5))} A" },
            "spaces" => now with { PanelSpaces = dice.Any([12, 16, 20, 30]) },
            "poles" => now.With(one with { Poles = 3 - one.Poles }),
            "move and rename" => now.With(one with { Space = FreeSpace(now), Name = FreshName() }),
            "spare" => now with { Circuits = now.Circuits.Add(New(FreeSpace(now)) with { Name = "Spare", Loads = [], Wire = null }) },
            _ => throw new ArgumentOutOfRangeException(nameof(edit), edit, "no such edit"),
        };
    }

    // One that has nothing to do with the rest; whoever resizes it, or takes it out, settles the trouble.
    private static HiddenCircuit Chest(Dice dice, bool withIds)
    {
        var chest = new HiddenCircuit(999, withIds ? "chest" : null, 11, "Chest", "15 A", 1);
        return dice.One(2) ? chest with { Breaker = "15" } : chest with { Loads = [new(998, "heating", "600 W", null)] };
    }

    private HiddenSchedule Replaced(HiddenSchedule now, HiddenCircuit one)
    {
        var other = New(one.Space) with { Name = FreshName(), Poles = one.Poles, Id = one.Id is null || dice.One(2) ? null : $"n{Fresh()}" };
        var without = Removed(now, one);
        return without with { Circuits = without.Circuits.Insert(now.Circuits.IndexOf(one), other) };
    }

    private HiddenSchedule Added(HiddenSchedule now)
    {
        var other = New(dice.One(3) ? dice.Next(1, 20) : FreeSpace(now)) with { Name = dice.One(6) ? "Heater" : FreshName() };
        if (now.Circuits.Any(circuit => circuit.Name == other.Name)) return now;
        return now with { Circuits = now.Circuits.Insert(dice.Next(now.Circuits.Length + 1), other) };
    }

    private static HiddenSchedule Removed(HiddenSchedule now, HiddenCircuit one) => now with
    {
        Circuits = now.Circuits.Remove(one),
        Scenarios = [.. now.Scenarios.Select(scenario => scenario with { Running = scenario.Running.Remove(one.Number) })],
    };

    private HiddenSchedule Load(HiddenSchedule now, HiddenCircuit circuit, Func<HiddenLoad, HiddenLoad> change)
    {
        if (circuit.Loads.IsEmpty) return now.With(circuit with { Loads = [NewLoad(circuit)] });
        var at = dice.Next(circuit.Loads.Length);
        return now.With(circuit with { Loads = circuit.Loads.SetItem(at, change(circuit.Loads[at])) });
    }

    private HiddenSchedule Scenario(HiddenSchedule now, Func<HiddenScenario, HiddenScenario> change)
    {
        if (now.Scenarios.IsEmpty) return now;
        var at = dice.Next(now.Scenarios.Length);
        return now with { Scenarios = now.Scenarios.SetItem(at, change(now.Scenarios[at])) };
    }

    private ImmutableArray<int> Toggled(HiddenSchedule now, ImmutableArray<int> running)
    {
        var named = now.Circuits.Where(circuit => circuit.Id is not null).Select(circuit => circuit.Number).ToList();
        if (named.Count == 0) return running;
        var number = dice.Any(named);
        return running.Contains(number) ? running.Remove(number) : running.Add(number);
    }

    private HiddenCircuit New(int space)
    {
        var circuit = new HiddenCircuit(Fresh(), null, space, "", $"{dice.Next(3, 7) * 5} A", 1)
        {
            Wire = dice.One(2) ? null : "12 AWG Cu", Length = dice.One(2) ? null : "40 ft",
        };
        return dice.Next(3) switch
        {
            0 => circuit,
            1 => circuit with { Loads = [NewLoad(circuit)] },
            _ => circuit with { Loads = [new(Fresh(), "receptacle", "1500 W", null)] },
        };
    }

    private HiddenLoad NewLoad(HiddenCircuit circuit) =>
        new(Fresh(), dice.Any([.. Kinds.Where(kind => circuit.Loads.All(load => load.Kind != kind))]), Rating(), null);

    private string Rating() => $"{dice.Next(1, 60) * 50} W";

    private int FreeSpace(HiddenSchedule now)
    {
        int[] free = [.. Enumerable.Range(1, now.PanelSpaces).Where(space => now.Circuits.All(circuit => !circuit.Spaces.Contains(space)))];
        return free.Length == 0 ? 1 : dice.Any(free);
    }

    private string FreshName() => $"{dice.Any(Things)} {Fresh()}";

    private int Fresh() => (1000 * side) + ++_made;
}
