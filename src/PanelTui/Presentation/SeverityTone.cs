using PanelTui.Engine;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>How a finding is painted, by how bad it is.</summary>
internal static class SeverityTone
{
    public static Tone Of(Severity severity) => severity switch
    {
        Severity.Error => Tone.Error,
        Severity.Warning => Tone.Warning,
        Severity.Note => Tone.Plain,
        _ => throw Unnamed.Of(severity),
    };
}
