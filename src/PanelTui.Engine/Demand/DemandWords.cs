using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>How methods are called.</summary>
public static class DemandWords
{
    extension(DemandMethodName method)
    {
        /// <summary>As the schedule file writes it: `dwelling-optional`.</summary>
        public string Word => method switch
        {
            DemandMethodName.DwellingStandard => "dwelling-standard",
            DemandMethodName.DwellingOptional => "dwelling-optional",
            DemandMethodName.DwellingExisting => "dwelling-existing",
            DemandMethodName.NonDwelling => "non-dwelling",
            DemandMethodName.Measured => "measured",
            _ => "selected",
        };
    }
}
