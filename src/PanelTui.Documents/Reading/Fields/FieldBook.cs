using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Reading.Fields;

/// <summary>
/// Every key of the format, in the order in which a file has them. The readers read by it and know no other.
/// </summary>
public static class FieldBook
{
    public static readonly ImmutableArray<Field> All =
    [
        .. TopFields.All, .. PanelFields.All, .. CodeFields.All, .. DemandFields.All, .. FeederFields.All,
        .. TransferFields.All, .. SourceFields.All, .. EnergyFields.All, .. CircuitFields.All, .. LoadFields.All,
        .. ScenarioFields.All, .. AcceptedFields.All,
    ];

    private static readonly FrozenDictionary<string, Field> ByPath = All.ToFrozenDictionary(field => field.Path);

    private static readonly FrozenDictionary<string, ImmutableArray<Field>> ByOwner =
        All.GroupBy(field => field.Owner).ToFrozenDictionary(group => group.Key, group => group.ToImmutableArray());

    /// <summary>
    /// The field with that path pattern, such as `circuits[].breaker`; null for a key that the format does not
    /// have.
    /// </summary>
    public static Field? Find(string path) => ByPath.GetValueOrDefault(path);

    /// <summary>The field that a place in a file belongs to; null for a key that the format does not have.</summary>
    public static Field? At(YamlPath path) => Find(PatternOf(path));

    /// <summary>
    /// The keys of one mapping, such as `circuits[]`, in the order in which they are written; the top of the file
    /// is "".
    /// </summary>
    public static ImmutableArray<Field> Of(string owner) => ByOwner.GetValueOrDefault(owner, []);

    /// <summary>`/circuits/3/breaker` as `circuits[].breaker`.</summary>
    public static string PatternOf(YamlPath path)
    {
        var pattern = new StringBuilder();
        foreach (var step in path.Steps)
        {
            if (step.Key is null) pattern.Append("[]");
            else pattern.Append(pattern.Length == 0 ? "" : ".").Append(step.Key);
        }

        return pattern.ToString();
    }
}
