using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running;

/// <summary>What one leg carries in a scenario, against what the source may give it.</summary>
/// <remarks>The limit is nothing where the schedule states none.</remarks>
public readonly record struct LegRun(Watts Running, Watts? Limit, Amperes Amperes)
{
    /// <summary>Nothing where no limit is stated.</summary>
    public bool? Ok => Limit is { } limit ? Running <= limit : null;
}
