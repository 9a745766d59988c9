using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Writing;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>
/// New loads as they are written: each in braces on one line, unless the file writes its loads line by line.
/// </summary>
internal static class LoadNodes
{
    public static (ImmutableArray<NewMapping> Loads, string? Refusal) Of(ImmutableArray<NewLoad> loads)
    {
        var read = loads.Select(load => Typing.Entries(LoadFields.Kind.Owner, load.Values)).ToImmutableArray();
        var refusal = read.Select(load => load.Refusal).FirstOrDefault(reason => reason is not null);
        return ([.. read.Select(load => new NewMapping(load.Entries))], refusal);
    }

    public static NewSequence List(Snapshot snapshot, ImmutableArray<NewMapping> loads) =>
        new([.. loads.Select(load => (NewNode)Styled(snapshot, load))], CollectionStyle.Block);

    public static NewMapping Styled(Snapshot snapshot, NewMapping load) =>
        load with { Style = WritesLineByLine(snapshot) ? CollectionStyle.Block : CollectionStyle.Flow };

    /// <summary>As the first load of the file is written; a file without loads gets braces.</summary>
    private static bool WritesLineByLine(Snapshot snapshot)
    {
        if (snapshot.Places.NodeAt(Places.Circuits) is not { } circuits) return false;
        return circuits.Items
            .SelectMany(circuit => Aliases.Resolve(circuit.Value).ValueOf(CircuitFields.Loads.Key)?.Items ?? [])
            .Select(load => load.Value)
            .FirstOrDefault(load => load.IsMapping) is { Style: YamlStyle.Block };
    }
}
