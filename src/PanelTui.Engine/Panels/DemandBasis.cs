using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>The ways to work out the calculated load that a schedule can name.</summary>
public enum DemandMethodName
{
    /// <summary>Article 220 Part III for dwellings.</summary>
    DwellingStandard,

    /// <summary>220.82.</summary>
    DwellingOptional,

    /// <summary>220.83.</summary>
    DwellingExisting,

    /// <summary>Article 220 Part III for other than dwellings.</summary>
    NonDwelling,

    /// <summary>220.87.</summary>
    Measured,

    /// <summary>The loads of the user's own choice, 702.4.</summary>
    Selected,
}

/// <summary>Which method the schedule names, and the figures it needs.</summary>
public sealed record DemandBasis
{
    public static readonly DemandBasis Default = new();

    public DemandMethodName Method { get; init; } = DemandMethodName.Selected;

    public SquareFeet? FloorArea { get; init; }

    /// <summary>The highest measured current on the busier leg.</summary>
    public Amperes? MeasuredPeak { get; init; }

    /// <summary>Over how many days the peak was measured.</summary>
    public int? MeasuredDays { get; init; }
}

/// <summary>The words for a demand method.</summary>
public static class DemandMethodNameWords
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
            DemandMethodName.Selected => "selected",
            _ => throw Unnamed.Of(method),
        };
    }
}
