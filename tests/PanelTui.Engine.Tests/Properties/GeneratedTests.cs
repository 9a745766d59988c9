using System.Collections;
using System.Reflection;
using CsCheck;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Properties;

/// <summary>The schedules by chance differ in every fact, so a fact that is added is tried by the property tests, too.</summary>
public class GeneratedTests
{
    private const int Schedules = 400;

    /// <summary>Facts with one value here: words, and facts that tests of their own try. A fact that is added is varied.</summary>
    private static readonly string[] LeftAlone =
    [
        "Panel.Name", "Panel.Location", "Panel.FedFrom", "Panel.Revision", "Panel.Revised",
        "Panel.VerifiedBy", "Panel.Spaces", "Panel.TandemSpaces", "Panel.FaultCurrent", "Panel.Interrupting",
        "Panel.Terminals", "Panel.NeutralBonded", "CodeBasis.Occupancy", "TransferEquipment.SwitchesNeutral",
        "TransferEquipment.LoadManagement", "StandbySource.Kind", "StandbySource.Location",
        "StandbySource.SurgeTime", "StandbySource.Neutral", "StandbySource.Gfci", "StandbySource.Battery",
        "StandbySource.Charging", "StandbySource.Solar", "Circuit.Name", "Breaker.Protection", "Load.Start",
        "Times.Factor", "Load.SoftStart", "Load.Duty", "Circuit.Fixed", "Circuit.Priority",
        "Circuit.Verified", "Scenario.Name", "Schedule.Accepted",
    ];

    [Fact]
    public void Every_fact_of_a_schedule_takes_more_than_one_value()
    {
        var seen = new Dictionary<string, HashSet<string>>();
        Generated.Any.Array[Schedules].Sample(schedules => schedules.ToList().ForEach(one => Note(seen, one)), iter: 1, seed: "0000KxdQFXF1");
        seen.ShouldNotBeEmpty();
        seen.Where(fact => fact.Value.Count < 2).Select(fact => fact.Key).Except(LeftAlone)
            .ShouldBeEmpty("Generated.cs gives these facts no second value");
    }

    private static void Note(Dictionary<string, HashSet<string>> seen, object facts)
    {
        foreach (var fact in FactsOf(facts.GetType()))
        {
            var value = fact.GetValue(facts);
            var name = $"{facts.GetType().Name}.{fact.Name}";
            if (!seen.TryGetValue(name, out var values)) seen[name] = values = [];
            values.Add(value is IEnumerable and not string ? $"{((IEnumerable)value).Cast<object>().Count()}" : $"{value}");
            foreach (var part in value is IEnumerable list and not string ? list.OfType<object>() : new[] { value }.OfType<object>())
            {
                if (part.GetType() is { Namespace: "PanelTui.Engine.Panels", IsValueType: false }) Note(seen, part);
            }
        }
    }

    private static IEnumerable<PropertyInfo> FactsOf(Type type) => type == typeof(PanelSystem)
        ? []
        : type.GetProperties(BindingFlags.Instance | BindingFlags.Public).Where(property => property.SetMethod is not null);
}
