using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

public enum TransferKind
{
    Manual,
    Automatic,
    Interlock,
}

/// <summary>What chooses between the two supplies, so that they are never connected together.</summary>
public sealed record TransferEquipment
{
    public TransferKind Kind { get; init; } = TransferKind.Manual;

    public Amperes? Rating { get; init; }

    /// <summary>Whether it has overcurrent protection of its own.</summary>
    public bool IntegralOcpd { get; init; }

    /// <summary>As it is written down.</summary>
    public bool? SwitchesNeutral { get; init; }

    /// <summary>As far as that is believed: breakers that an interlock holds leave the neutral connected, so of one that is said to switch it nothing is known.</summary>
    public bool? NeutralIsSwitched => this is { Kind: TransferKind.Interlock, SwitchesNeutral: true } ? null : SwitchesNeutral;

    /// <summary>Whether it sheds loads so that the source is never asked for more than it has.</summary>
    public bool LoadManagement { get; init; }
}

/// <summary>The words for a kind of transfer equipment.</summary>
public static class TransferKindWords
{
    extension(TransferKind kind)
    {
        /// <summary>As the schedule file writes it: `automatic`.</summary>
        public string Word => Row(kind).Word;

        /// <summary>As a sheet names it: `automatic transfer switch`.</summary>
        public string Title => Row(kind).Title;
    }

    private static (string Word, string Title) Row(TransferKind kind) => kind switch
    {
        TransferKind.Manual => ("manual", "manual transfer switch"),
        TransferKind.Automatic => ("automatic", "automatic transfer switch"),
        TransferKind.Interlock => ("interlock", "interlock"),
        _ => throw Unnamed.Of(kind),
    };
}
