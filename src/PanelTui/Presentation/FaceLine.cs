using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>What stands side by side on the wall: an odd position on the left, an even one on the right, one leg behind both.</summary>
/// <param name="Leg">The leg whose stab the line shares.</param>
/// <param name="Right">Nothing where the panel ends on an odd space, or where only the other side is split into halves.</param>
internal sealed record FaceLine(Leg Leg, FaceCell? Left, FaceCell? Right)
{
    public FaceCell? On(bool left) => left ? Left : Right;
}
