using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Switching;

/// <summary>The two ways across one kind of transfer equipment.</summary>
internal abstract class SwitchingWay
{
    public abstract IEnumerable<SwitchingStep> ToStandby { get; }

    public abstract IEnumerable<SwitchingStep> Back { get; }

    /// <summary>Keeps equipment that closes by itself from doing so while a cable is handled.</summary>
    public virtual SwitchingStep? Disarm => null;

    /// <summary>Undoes <see cref="Disarm"/>.</summary>
    public virtual SwitchingStep? Arm => null;

    /// <summary>What the breaker is called through which the grid comes to this panel or the equipment before it.</summary>
    public virtual string GridBreaker => "the grid's breaker to this equipment";

    /// <summary>What to look at before a cable is handled, besides grid and source.</summary>
    public virtual SwitchingStep? BeforeCable => null;

    public static SwitchingWay Of(SwitchingFacts facts) => facts.Kind switch
    {
        TransferKind.Interlock => new InterlockWay(facts),
        TransferKind.Manual => new ManualWay(facts),
        TransferKind.Automatic => new AutomaticWay(facts),
        null when facts.IsAlone => new AloneWay(facts),
        null => new UnknownWay(),
        var kind => throw Unnamed.Of(kind),
    };
}
