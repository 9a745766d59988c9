using System.Collections.Immutable;
using PanelTui.Documents.Reading.Fields;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Intents;

/// <summary>Makes the loads of a circuit what a person typed: what is the same stays as it is written.</summary>
public static class SetLoads
{
    public static Intended In(Snapshot snapshot, int circuit, ImmutableArray<NewLoad> loads)
    {
        var there = snapshot.Places.NodeAt(Places.Loads(circuit))?.Items.Length ?? 0;
        var kept = Math.Min(there, loads.Length);
        return InOrder.Of(
            snapshot,
            $"Set the loads of {Called.Circuit(snapshot, circuit)}",
            [
                .. Enumerable.Range(0, kept).Select(load => (Func<Snapshot, Intended>)(now => SetLoad(now, circuit, load, loads[load]))),
                .. loads.Skip(kept).Select(load => (Func<Snapshot, Intended>)(now => AddLoad.In(now, circuit, load))),
                .. Enumerable.Range(kept, there - kept).Reverse().Select(load => (Func<Snapshot, Intended>)(now => RemoveLoad.In(now, circuit, load))),
            ]);
    }

    /// <summary>All keys of a load at once, since some make sense only together.</summary>
    private static Intended SetLoad(Snapshot snapshot, int circuit, int load, NewLoad wanted)
    {
        var path = Places.Load(circuit, load);
        var written = snapshot.Places.NodeAt(path) is { } node ? Aliases.Resolve(node).Pairs : [];
        var gone = written
            .Select(pair => pair.Key.Value)
            .Where(key => FieldBook.Of(LoadFields.Kind.Owner).Any(field => field.Key == key) && wanted.Values.All(value => value.Key != key))
            .Select(key => (path.Then(key), ""));
        var set = wanted.Values.Where(value => !IsWritten(written, value)).Select(value => (path.Then(value.Key), value.Text));
        return SetField.In(snapshot, $"Set {Called.Load(snapshot, circuit, load)}", [.. set, .. gone]);
    }

    private static bool IsWritten(ImmutableArray<YamlPair> written, TypedValue value) =>
        written.Any(pair => pair.Key.Value == value.Key && pair.Value.Value == value.Text);
}
