using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Switching;

/// <summary>The two ways across one kind of transfer equipment.</summary>
internal abstract class SwitchingWay
{
    public abstract IEnumerable<SwitchingStep> ToStandby { get; }

    public abstract IEnumerable<SwitchingStep> Back { get; }

    /// <summary>Keeps equipment that closes by itself from doing so while a cable is joined.</summary>
    public virtual SwitchingStep? Disarm => null;

    /// <summary>Undoes <see cref="Disarm"/>.</summary>
    public virtual SwitchingStep? Arm => null;

    /// <summary>What to look at before a cable is joined, besides grid and source.</summary>
    public virtual SwitchingStep? BeforeCable => null;

    public static SwitchingWay Of(SwitchingFacts facts) => facts.Kind switch
    {
        TransferKind.Interlock => new InterlockWay(facts),
        TransferKind.Manual => new ManualWay(facts),
        TransferKind.Automatic => new AutomaticWay(facts),
        _ when facts.Standing is SourceStanding.OnlySystem or SourceStanding.OutletsOnly => new AloneWay(facts),
        _ => new UnknownWay(),
    };
}
