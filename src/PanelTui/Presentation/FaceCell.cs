using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>One breaker position on the face of the panel: a space, or the half of one that holds tandem breakers.</summary>
/// <param name="Pole">Which pole of the breaker sits here, counted from 0 at the top.</param>
/// <param name="Crowded">Whether a second circuit claims the same position.</param>
internal sealed record FaceCell(SpaceNumber Space, Leg Leg, Circuit? Circuit, int Pole, bool Crowded)
{
    public bool IsOpen => Circuit is null;

    public bool IsTop => Circuit is not null && Pole == 0;

    public bool IsBottom => Circuit is { } circuit && Pole == circuit.Breaker.Poles - 1;
}
