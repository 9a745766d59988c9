using System.Collections.Immutable;

namespace PanelTui.Engine.Panels;

/// <summary>
/// The whole file as facts, without its layout. What nobody wrote down is nothing, or the format's default.
/// </summary>
public sealed record Schedule
{
    public required Panel Panel { get; init; }

    public CodeBasis Code { get; init; } = CodeBasis.Default;

    public DemandBasis Demand { get; init; } = DemandBasis.Default;

    public Feeder? Feeder { get; init; }

    public TransferEquipment? Transfer { get; init; }

    public StandbySource? Source { get; init; }

    /// <summary>In the order of the file.</summary>
    public ImmutableArray<Circuit> Circuits { get; init; } = [];

    public ImmutableArray<Scenario> Scenarios { get; init; } = [];

    /// <summary>Findings that are to be listed apart, in the order of the file.</summary>
    public ImmutableArray<Acceptance> Accepted { get; init; } = [];
}
