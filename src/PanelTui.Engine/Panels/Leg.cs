namespace PanelTui.Engine.Panels;

/// <summary>A line conductor of the panel's bus: A and B on one phase, A, B and C on three.</summary>
public enum Leg
{
    A,
    B,
    C,
}
