using System.Collections.Immutable;
using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>The keys of a scenario.</summary>
internal static class ScenarioFields
{
    private static readonly CircuitNameForm Circuit = new();

    public static readonly ValueField<string> Name = new("scenarios[].name", Forms.Text, "Harvest night",
        "What the scenario is called, one name for each") { IsRequired = true };

    public static readonly ListField<string> Running = new("scenarios[].running", Circuit, "[sort-lights, cold-room]",
        "The ids of the circuits that run, or all for every circuit on standby") { Default = "all" };

    public static readonly ListField<string> Except = new("scenarios[].except", Circuit, "[well-pump]",
        "The ids of circuits that do not run") { Default = "none" };

    public static readonly ValueField<string> Starting = new("scenarios[].starting", Circuit, "well-pump",
        "The id of the circuit whose motor starts last, with all the others running");

    public static readonly ImmutableArray<Field> All = [Name, Running, Except, Starting];
}
