using PanelTui.Engine;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Rules;

namespace PanelTui.Presentation;

/// <summary>What a rule rests on: its sections by edition, and how well each stands.</summary>
internal static class RuleBasis
{
    public static IEnumerable<string> Of(CodeRule rule)
    {
        string[] sections = [.. rule.Sections.Select(Of)];
        return sections.Length == 0 ? ["common practice, no source"] : sections;
    }

    /// <summary>`NEC 2017, 2020: 702.4(B)(1); 2023: 702.4(A)(1); seen in a published source`.</summary>
    private static string Of(CodeSection section)
    {
        var numbers =
            from edition in Enum.GetValues<CodeEdition>()
            where edition.Year >= section.Numbers[0].Since
            group edition.Year by section.In(edition).Section into editions
            select $"{string.Join(", ", editions)}: {editions.Key}";
        return $"{section.Document} {string.Join("; ", numbers)}; {Of(section.Standing)}";
    }

    private static string Of(Standing standing) => standing switch
    {
        Standing.Seen => "seen in a published source",
        Standing.FromMemory => "from memory: look it up in the adopted code book",
        Standing.CommonPractice => "common practice, no source",
        _ => throw Unnamed.Of(standing),
    };
}
