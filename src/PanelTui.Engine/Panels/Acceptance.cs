namespace PanelTui.Engine.Panels;

/// <summary>A finding that its owner has looked at and lets stand, with the reason.</summary>
public sealed record Acceptance
{
    /// <summary>Its place in the file, from 0: what joins it to its lines.</summary>
    public required int Ordinal { get; init; }

    /// <summary>The rule whose finding it is.</summary>
    public required string Rule { get; init; }

    /// <summary>One of the spaces that the finding is about; nothing for every finding of the rule.</summary>
    public SpaceNumber? Space { get; init; }

    public required string Because { get; init; }
}
