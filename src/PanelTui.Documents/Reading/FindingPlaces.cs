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
        ["breaker-above-small-conductor-limit"] = CircuitFields.Breaker,
        ["breaker-above-conductor"] = CircuitFields.Breaker,
        ["continuous-load-above-80-percent-of-breaker"] = CircuitFields.Breaker,
        ["voltage-drop-high"] = CircuitFields.Length,
        ["breaker-above-mocp"] = CircuitFields.Breaker,
        ["breaker-above-motor-limit"] = CircuitFields.Breaker,
        ["conductor-below-mca"] = CircuitFields.Wire,
        ["motor-conductor-too-small"] = CircuitFields.Wire,
        ["shared-neutral-on-one-leg"] = CircuitFields.Space,
        ["shared-neutral-without-tie"] = CircuitFields.Multiwire,
        ["shared-neutral-without-partner"] = CircuitFields.Multiwire,
        ["shared-neutral-on-one-leg-source"] = CircuitFields.Multiwire,
        ["tie-without-partner"] = CircuitFields.Tied,
        ["moved-circuit-without-its-neutral"] = CircuitFields.NeutralMoved,
        ["neutral-of-moved-circuit-not-recorded"] = CircuitFields.MovedFrom,
        ["gfci-missing"] = CircuitFields.Places,
        ["afci-missing"] = CircuitFields.Places,
        ["directory-text-vague"] = CircuitFields.Name,
        ["directory-text-duplicate"] = CircuitFields.Name,
        ["directory-text-transient"] = CircuitFields.Name,
        ["running-above-rating"] = CircuitFields.Loads,
        ["load-out-of-bounds"] = CircuitFields.Loads,
        ["motor-outside-table"] = CircuitFields.Loads,
        ["line-to-line-load-on-one-leg-source"] = CircuitFields.Loads,
        ["bus-below-its-supply"] = PanelFields.Bus,
        ["bus-below-demand"] = PanelFields.Bus,
        ["main-below-demand"] = PanelFields.Main,
        ["interrupting-below-fault-current"] = PanelFields.Interrupting,
        ["neutral-bonded-in-subpanel"] = PanelFields.NeutralBonded,
        ["feeder-device-below-demand"] = FeederFields.Ocpd,
        ["feeder-conductor-below-demand"] = FeederFields.Conductor,
        ["feeder-device-above-conductor"] = FeederFields.Conductor,
        ["feeder-voltage-drop-high"] = FeederFields.Length,
        ["demand-lacks-a-figure"] = DemandFields.Method,
        ["measured-too-short"] = DemandFields.MeasuredDays,
        ["optional-method-out-of-place"] = DemandFields.Method,
        ["transfer-equipment-too-small"] = TransferFields.Rating,
        ["automatic-transfer-beyond-source"] = TransferFields.Kind,
        ["interlock-to-look-at"] = TransferFields.Kind,
        ["required-dwelling-circuits-shed"] = TransferFields.LoadManagement,
        ["neutral-bonded-twice"] = SourceFields.Neutral,
        ["neutral-bonded-nowhere"] = SourceFields.Neutral,
        ["neutral-bond-not-recorded"] = SourceFields.Neutral,
        ["source-without-transfer-equipment"] = SourceFields.Kind,
        ["legs-uneven"] = SourceFields.Arrangement,
        ["one-leg-source-at-neutral-bus"] = SourceFields.Ocpd,
        ["sign-at-one-leg-source"] = SourceFields.Arrangement,
        ["sign-at-inlet"] = SourceFields.Outlet,
        ["inlet-to-be-outside"] = SourceFields.Outlet,
        ["low-fault-current-on-standby"] = SourceFields.SurgeTime,
        ["source-leg-overloaded"] = SourceFields.ContinuousPerLeg,
        ["surge-without-time"] = SourceFields.SurgeTime,
        ["hours-to-reserve"] = SourceFields.Battery,
        ["charging-beyond-input"] = SourceFields.Charging,
        ["charging-stops-below-reserve"] = SourceFields.Charging,
        ["interlock-switches-neutral"] = TransferFields.SwitchesNeutral,
        ["source-device-below-scenario"] = SourceFields.Ocpd,
        ["cord-or-inlet-below-source-breaker"] = SourceFields.Outlet,
        ["source-outlet-without-neutral"] = SourceFields.Outlet,
        ["field-made-cord-too-small"] = SourceFields.Cord,
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
