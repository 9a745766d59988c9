namespace PanelTui.Engine.Panels;

/// <summary>The editions of the National Electrical Code (NFPA 70) that citations can follow.</summary>
public enum CodeEdition
{
    Nec2017,
    Nec2020,
    Nec2023,
}

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
