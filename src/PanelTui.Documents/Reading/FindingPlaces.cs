using System.Collections.Frozen;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading;

/// <summary>
/// The key that each rule is about. A rule that is not here is shown at its circuit, or at the panel.
/// </summary>
internal static class FindingPlaces
{
    /// <summary>The one rule whose finding is about two circuits.</summary>
    public const string SpaceTakenTwice = "space-taken-twice";

    public static readonly FrozenDictionary<string, Field> Keys = new Dictionary<string, Field>
    {
        [SpaceTakenTwice] = CircuitFields.Space,
        ["breaker-past-last-space"] = CircuitFields.Space,
        ["more-poles-than-legs"] = CircuitFields.Poles,
        ["tandem-not-listed-here"] = CircuitFields.Space,
        ["rating-not-standard"] = CircuitFields.Breaker,
        ["load-out-of-bounds"] = CircuitFields.Loads,
        ["motor-outside-table"] = CircuitFields.Loads,
        ["line-to-line-load-on-one-leg-source"] = CircuitFields.Loads,
        ["bus-below-its-supply"] = PanelFields.Bus,
        ["bus-below-demand"] = PanelFields.Bus,
        ["main-below-demand"] = PanelFields.Main,
        ["neutral-bonded-in-subpanel"] = PanelFields.NeutralBonded,
        ["feeder-device-below-demand"] = FeederFields.Ocpd,
        ["demand-lacks-a-figure"] = DemandFields.Method,
        ["measured-too-short"] = DemandFields.MeasuredDays,
        ["optional-method-out-of-place"] = DemandFields.Method,
        ["transfer-equipment-too-small"] = TransferFields.Rating,
        ["source-leg-overloaded"] = SourceFields.ContinuousPerLeg,
        ["source-device-below-scenario"] = SourceFields.Ocpd,
    }.ToFrozenDictionary();

    public static bool IsAboutPanel(string rule) => Keys.GetValueOrDefault(rule) is { } field && !IsOfCircuit(field);

    public static YamlPath InCircuit(string rule, int ordinal)
    {
        var circuit = YamlPath.Of(TopFields.Circuits.Key, ordinal);
        return Keys.GetValueOrDefault(rule) is { } field && IsOfCircuit(field) ? circuit.Then(field.Key) : circuit;
    }

    public static YamlPath InPanel(string rule) => IsAboutPanel(rule)
        ? YamlPath.Of(Keys[rule].Owner, Keys[rule].Key)
        : YamlPath.Of(TopFields.Panel.Key);

    private static bool IsOfCircuit(Field field) => field.Owner == CircuitFields.Space.Owner;
}
