using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Panels;

public enum Occupancy
{
    Dwelling,
    NonDwelling,
}

/// <summary>Which edition the citations follow, and what the building is.</summary>
public sealed record CodeBasis
{
    public static readonly CodeBasis Default = new();

    public CodeEdition Edition { get; init; } = CodeEdition.Nec2023;

    public Occupancy Occupancy { get; init; } = Occupancy.Dwelling;
}

/// <summary>The words for an occupancy.</summary>
public static class OccupancyWords
{
    extension(Occupancy occupancy)
    {
        /// <summary>As the schedule file writes it: `non-dwelling`.</summary>
        public string Word => occupancy switch
        {
            Occupancy.Dwelling => "dwelling",
            Occupancy.NonDwelling => "non-dwelling",
            _ => throw Unnamed.Of(occupancy),
        };
    }
}
