using System.Collections.Immutable;

namespace PanelTui.Documents.Reading.Values;

/// <summary>`yes` or `no`; `true` and `false` as well, in any case.</summary>
internal sealed class YesNoForm() : ValueForm<bool>("yes or no")
{
    public override ImmutableArray<string> Allowed { get; } = ["yes", "no"];

    public override string Written(string text) => text.Trim().ToUpperInvariant() switch
    {
        "Y" or "YES" => "yes",
        "N" or "NO" => "no",
        _ => text.Trim(),
    };

    public override Outcome<bool> Read(string text) => text.Trim().ToUpperInvariant() switch
    {
        "YES" or "TRUE" => Outcome.Of(true),
        "NO" or "FALSE" => Outcome.Of(false),
        _ => Outcome.Refused<bool>($"is {Quoted.Of(text)}; write yes or no"),
    };
}
