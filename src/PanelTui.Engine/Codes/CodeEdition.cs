using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes;

/// <summary>The editions of the National Electrical Code (NFPA 70) that citations can follow.</summary>
public enum CodeEdition
{
    Nec2017,
    Nec2020,
    Nec2023,
}

/// <summary>The year on the cover of an edition.</summary>
public static class CodeEditionYear
{
    extension(CodeEdition edition)
    {
        /// <summary>As the schedule file writes it: `2023`.</summary>
        public string Word => Shown.Exactly(edition.Year);

        public int Year => edition switch
        {
            CodeEdition.Nec2017 => 2017,
            CodeEdition.Nec2020 => 2020,
            CodeEdition.Nec2023 => 2023,
            _ => throw Unnamed.Of(edition),
        };
    }
}
