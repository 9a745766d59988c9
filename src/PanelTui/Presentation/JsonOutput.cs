using System.Collections.Immutable;
using System.Text.Json;

namespace PanelTui.Presentation;

/// <summary>An output in JSON: one object that begins with its version, `schema`, and its name, `output`.</summary>
/// <param name="Name">The name of its JSON Schema, docs/json/NAME.schema.json.</param>
/// <param name="Version">Rises when a key is removed or renamed, or its meaning changes; added keys leave it as it is.</param>
internal sealed record JsonOutput(string Name, int Version)
{
    public static readonly JsonOutput Check = new("check", 1);
    public static readonly JsonOutput Calc = new("calc", 1);
    public static readonly JsonOutput Why = new("why", 1);
    public static readonly JsonOutput Run = new("run", 1);
    public static readonly JsonOutput Balance = new("balance", 1);
    public static readonly JsonOutput Diff = new("diff", 1);
    public static readonly JsonOutput Transfer = new("transfer", 1);
    public static readonly JsonOutput Rules = new("rules", 1);
    public static readonly JsonOutput Info = new("info", 1);
    public static readonly JsonOutput Print = new("print", 1);
    public static readonly JsonOutput Merge = new("merge", 1);
    public static readonly JsonOutput GitSetup = new("git-setup", 1);

    public static readonly ImmutableArray<JsonOutput> All =
        [Check, Calc, Why, Run, Balance, Diff, Transfer, Rules, Info, Print, Merge, GitSetup];

    /// <summary>The object as text.</summary>
    /// <param name="write">Writes the keys that follow `schema` and `output`.</param>
    public string Of(Action<Utf8JsonWriter> write) => JsonText.Of(json =>
    {
        json.WriteStartObject();
        json.WriteNumber("schema", Version);
        json.WriteString("output", Name);
        write(json);
        json.WriteEndObject();
    });
}
