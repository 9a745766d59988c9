namespace PanelTui.Engine.Rules;

/// <summary>A finding that the schedule lets stand, and why.</summary>
public sealed record AcceptedFinding(Finding Finding, string Because);
