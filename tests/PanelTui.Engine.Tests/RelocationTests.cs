using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests;

/// <summary>Carrying a breaker to another space: common practice, no source; a breaker takes n, n + 2, n + 4.</summary>
public class RelocationTests
{
    private static readonly Schedule Shed = new()
    {
        Panel = new Panel { System = PanelSystem.SplitPhase, Spaces = 12 },
        Circuits =
        [
            Breaker(0, "lights", "1"),
            Breaker(1, "pump", "3", poles: 2),
            Breaker(2, "outlets", "2"),
            Breaker(3, "heater", "4", poles: 2),
            Breaker(4, "fan", "11a"),
            Breaker(5, "lamp", "11b"),
        ],
    };

    [Theory]
    [InlineData("lights", "7", "lights to 7")]
    [InlineData("lights", "2", "lights to 2, outlets to 1")]
    [InlineData("pump", "4", "pump to 4, heater to 3")]
    [InlineData("pump", "1", "pump to 1, lights to 5")]
    [InlineData("fan", "11b", "fan to 11b, lamp to 11a")]
    [InlineData("lights", "1", "")]
    public void A_breaker_moves_and_what_it_meets_changes_places(string name, string to, string expected) =>
        string.Join(", ", Plan(name, to).Hops.Select(hop => $"{Shed.Circuits[hop.Ordinal].Name} to {hop.To}")).ShouldBe(expected);

    [Theory]
    [InlineData("pump", "11", "2 poles from space 11 down would need space 13, past the last one")]
    [InlineData("lights", "4", "heater takes 4 and 6: only a part of it is in the way")]
    [InlineData("fan", "4", "heater takes 4 and 6: only a part of it is in the way")]
    [InlineData("lights", "13", "one pole from space 13 down would need space 13, past the last one")]
    public void A_breaker_that_does_not_fit_says_why(string name, string to, string why) => Plan(name, to).WhyNot.ShouldBe(why);

    [Fact]
    public void No_exchange_ever_puts_two_breakers_into_one_space()
    {
        foreach (var circuit in Shed.Circuits.AtLeastOne())
        {
            foreach (var to in Enumerable.Range(1, 14))
                Places(Relocation.Of(Shed, circuit, new SpaceNumber(to))).ShouldBeUnique();
        }
    }

    private static IEnumerable<SpaceNumber> Places(Relocation plan) => Shed.Circuits
        .Select(circuit => plan.Hops.FirstOrDefault(hop => hop.Ordinal == circuit.Ordinal) is { To.Number: > 0 } hop
            ? circuit with { Space = hop.To }
            : circuit)
        .SelectMany(circuit => circuit.Spaces);

    private static Relocation Plan(string name, string to)
    {
        SpaceNumber.TryParse(to, out var space).ShouldBeTrue();
        return Relocation.Of(Shed, Shed.Circuits.Single(circuit => circuit.Name == name), space);
    }

    private static Circuit Breaker(int ordinal, string name, string space, int poles = 1)
    {
        SpaceNumber.TryParse(space, out var top).ShouldBeTrue();
        return new Circuit { Ordinal = ordinal, Name = name, Space = top, Breaker = new Breaker(20.A, poles) };
    }
}
