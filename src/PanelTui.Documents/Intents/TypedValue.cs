namespace PanelTui.Documents.Intents;

/// <summary>A key and its value as a person typed it: `breaker`, `20 A`.</summary>
public readonly record struct TypedValue(string Key, string Text);
