using System.Collections.Immutable;
using PanelTui.Documents.Comparing;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Merging;

/// <summary>What was read off one device: another rating may be another device, for which the rest was never read.</summary>
internal static class Nameplate
{
    private static readonly ImmutableArray<string> OfTheDevice =
        [LoadFields.Running.Key, LoadFields.Mca.Key, LoadFields.Mocp.Key, LoadFields.Start.Key, LoadFields.PowerFactor.Key, LoadFields.Volts.Key];

    /// <summary>True when one side rated the load anew and the other changed what its device says or was measured at.</summary>
    public static bool IsInDoubt(YamlNode was, YamlNode mine, YamlNode other) => Clash(was, mine, other) || Clash(was, other, mine);

    private static bool Clash(YamlNode was, YamlNode one, YamlNode another) =>
        Differs(was, one, LoadFields.Rating.Key) && OfTheDevice.Any(key => Differs(was, another, key));

    private static bool Differs(YamlNode was, YamlNode now, string key) =>
        !Likeness.Same(KeyChanges.Value(was, key), KeyChanges.Value(now, key));
}
