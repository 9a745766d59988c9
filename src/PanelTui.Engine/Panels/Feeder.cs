using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>What the feeder's conductors run in, as far as it matters to their impedance.</summary>
public enum Conduit
{
    /// <summary>PVC, or a cable without a metal sheath.</summary>
    Pvc,

    Steel,
}

/// <summary>From the transfer equipment to this panel; whatever nobody wrote down is nothing.</summary>
public sealed record Feeder
{
    /// <summary>The overcurrent device ahead of the feeder on the normal supply.</summary>
    public Amperes? Ocpd { get; init; }

    public Conductor? Conductor { get; init; }

    /// <summary>The insulation's temperature rating.</summary>
    public Celsius? Insulation { get; init; }

    /// <summary>One way.</summary>
    public Feet? Length { get; init; }

    public Celsius? Ambient { get; init; }

    /// <summary>Current-carrying conductors together in its raceway or cable, its own among them.</summary>
    public int? CurrentCarrying { get; init; }

    public Conduit Conduit { get; init; } = Conduit.Pvc;
}

/// <summary>The words for a conduit.</summary>
public static class ConduitWords
{
    extension(Conduit conduit)
    {
        /// <summary>As the schedule file writes it: `pvc`.</summary>
        public string Word => conduit switch
        {
            Conduit.Pvc => "pvc",
            Conduit.Steel => "steel",
            _ => throw Unnamed.Of(conduit),
        };
    }
}
