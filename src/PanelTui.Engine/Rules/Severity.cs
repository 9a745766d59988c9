namespace PanelTui.Engine.Rules;

/// <summary>How much a finding weighs; an error makes the check fail.</summary>
public enum Severity
{
    Note,
    Warning,
    Error,
}
