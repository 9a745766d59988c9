using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>Choices of the schedule in the words of its file.</summary>
internal static class Words
{
    public static string Of(DemandMethodName method) => method switch
    {
        DemandMethodName.DwellingStandard => "dwelling-standard",
        DemandMethodName.DwellingOptional => "dwelling-optional",
        DemandMethodName.DwellingExisting => "dwelling-existing",
        DemandMethodName.NonDwelling => "non-dwelling",
        DemandMethodName.Measured => "measured",
        _ => "selected",
    };

    public static string Of(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    /// <summary>The mark that repeats a severity where there is no room for the word.</summary>
    public static string Mark(Severity severity) => severity switch
    {
        Severity.Error => "E",
        Severity.Warning => "W",
        _ => "N",
    };
}
