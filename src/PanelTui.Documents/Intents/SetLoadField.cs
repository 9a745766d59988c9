namespace PanelTui.Documents.Intents;

/// <summary>Gives a key of a load the value that a person typed; no text clears the key.</summary>
public static class SetLoadField
{
    public static Intended In(Snapshot snapshot, int circuit, int load, string key, string text) =>
        SetField.In(snapshot, Places.Load(circuit, load).Then(key), text);
}
