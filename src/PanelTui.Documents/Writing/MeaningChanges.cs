using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Writing;

/// <summary>What an edit intends, said on meanings alone.</summary>
internal static class MeaningChanges
{
    public static Meaning WithEntry(this Meaning meaning, int index, NewEntry entry)
    {
        var map = meaning as MappingMeaning ?? new([], []);
        return map with
        {
            Marks = meaning.Marks,
            Keys = map.Keys.Insert(index, new ScalarMeaning(CoreType.Text, entry.Key)),
            Values = map.Values.Insert(index, entry.Value.Meaning),
        };
    }

    public static Meaning WithoutEntry(this Meaning meaning, int index)
    {
        var map = (MappingMeaning)meaning;
        return map with { Keys = map.Keys.RemoveAt(index), Values = map.Values.RemoveAt(index) };
    }

    public static Meaning WithItem(this Meaning meaning, int index, Meaning item)
    {
        var list = meaning as SequenceMeaning ?? new([]);
        return list with { Marks = meaning.Marks, Items = list.Items.Insert(index, item) };
    }

    public static Meaning WithoutItem(this Meaning meaning, int index)
    {
        var list = (SequenceMeaning)meaning;
        return list with { Items = list.Items.RemoveAt(index) };
    }
}
