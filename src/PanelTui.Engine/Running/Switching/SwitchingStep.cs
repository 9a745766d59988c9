using System.Collections.Immutable;

namespace PanelTui.Engine.Running.Switching;

/// <summary>What a step moves.</summary>
public enum Handle
{
    /// <summary>The branch breakers of this panel.</summary>
    Branches,

    /// <summary>The branch breakers that stay off on standby, and no others.</summary>
    LeftOff,

    /// <summary>The breaker through which the grid reaches this panel or the equipment before it.</summary>
    Grid,

    /// <summary>The back-fed breaker of the source, on the other side of an interlock.</summary>
    BackFed,

    /// <summary>The handle of a manual transfer switch: on is the source's side, off the grid's.</summary>
    TransferSwitch,

    /// <summary>The selector of automatic equipment: off keeps it from closing by itself.</summary>
    Selector,

    /// <summary>An engine that a person starts and stops.</summary>
    Engine,

    /// <summary>The source's own breaker or output.</summary>
    Output,

    /// <summary>The disconnect of the solar modules.</summary>
    Solar,
}

/// <summary>One thing to do on the way to standby or back.</summary>
/// <param name="Words">A whole sentence or several, for the person who does it.</param>
/// <param name="Moves">What it moves, and whether it is then on; nothing for a look or a rule.</param>
public sealed record SwitchingStep(string Words, params ImmutableArray<(Handle Handle, bool On)> Moves);
