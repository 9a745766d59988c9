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
        public int Year => edition switch
        {
            CodeEdition.Nec2017 => 2017,
            CodeEdition.Nec2020 => 2020,
            _ => 2023,
        };
    }
}
