using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Rules.Directory;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>A panel behind optional standby equipment carries nothing that a code requires as a load for emergencies or fire protection.</summary>
/// <remarks>Told by the words of the entry, for nothing else in a schedule says it: the list is common practice, no source.</remarks>
public sealed class EmergencyLoadOnStandbyPanelRule : CodeRule
{
    private static readonly ImmutableArray<string> Phrases =
    [
        "EMERGENCY", "EXIT LIGHT", "EXIT LIGHTS", "EXIT LIGHTING", "EXIT SIGN", "EXIT SIGNS", "EGRESS",
        "FIRE ALARM", "FIRE ALARMS", "FIRE DETECTION", "FIRE PUMP", "FIRE PUMPS", "SPRINKLER", "SPRINKLERS", "SMOKE CONTROL", "SMOKE EXHAUST",
    ];

    /// <summary>A heat pump's second stage, and no one's way out.</summary>
    private const string EmergencyHeat = "EMERGENCY HEAT";

    public override string Name => "emergency-load-on-standby-panel";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Loads for emergencies and fire protection hang on transfer equipment of their own, not on an optional standby panel.";

    public override string Why =>
        "An optional standby source may be off, shed or slow to start; loads that a code requires for getting people out need a source, a transfer and wiring that it asks for by name.";

    public override string Advice =>
        "Ask the authority having jurisdiction whether this load is required by a code (Articles 700, 701, 760, the building and fire code); if it is, feed it as those say, not from here. Unit equipment with its own battery has rules of its own.";

    public override CodeSection? Section { get; } = Nec.FromMemory("700.5(D)");

    public override IEnumerable<Finding> Check(RuleContext context) => context.Schedule.Source is null
        ? []
        : from circuit in context.Circuits
          where !circuit.IsSpare && Reads(circuit.Name)
          select Found(context, circuit.Spaces, $"{RuleWords.Place(circuit)} reads like a load for emergencies or fire protection, on an optional standby source.");

    private static bool Reads(string name)
    {
        var words = $" {DirectoryWords.Plain(name)} ".Replace($" {EmergencyHeat} ", " ", StringComparison.Ordinal);
        return Phrases.Any(phrase => words.Contains($" {phrase} ", StringComparison.Ordinal));
    }
}
