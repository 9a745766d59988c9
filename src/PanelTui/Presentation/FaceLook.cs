using System.Collections.Frozen;
using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>What the face shows beside the breakers themselves: the cursor, and a breaker in the hand.</summary>
/// <param name="Held">The circuit in the hand, by its place in the file.</param>
/// <param name="Landing">The positions it would take if it were dropped now.</param>
internal sealed record FaceLook(SpaceNumber Cursor, int? Held, FrozenSet<SpaceNumber> Landing)
{
    public static FaceLook At(SpaceNumber cursor) => new(cursor, null, FrozenSet<SpaceNumber>.Empty);

    public Tone ToneOf(FaceCell cell) => cell switch
    {
        _ when cell.Space == Cursor => Tone.Cursor,
        _ when Landing.Contains(cell.Space) => Tone.Landing,
        { Crowded: true } => Tone.Error,
        { IsOpen: true } => Tone.Faint,
        { Circuit.Ordinal: var ordinal } when ordinal == Held => Tone.Faint,
        _ => Tone.Plain,
    };
}
