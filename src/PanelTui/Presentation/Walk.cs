using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>Where the cursor goes on the face of a panel: it never leaves it, and skips places where nothing is.</summary>
internal static class Walk
{
    /// <summary>So many lines down the same side, or up where negative; as far as there are lines.</summary>
    public static SpaceNumber By(Face face, SpaceNumber from, int lines)
    {
        var places = face.Lines.Select(line => line.On(from.IsLeft)).Where(cell => cell is not null).ToList();
        if (places.Count == 0) return from;
        var cursor = face.At(from);
        var here = places.FindIndex(cell => ReferenceEquals(cell, cursor));
        return places[Math.Clamp(here + lines, 0, places.Count - 1)]!.Space;
    }

    /// <summary>To the other side, on the same line or the nearest above that has a place there.</summary>
    public static SpaceNumber Across(Face face, SpaceNumber from, bool left)
    {
        if (from.IsLeft == left) return from;
        for (var line = face.LineOf(from); line >= 0; line--)
        {
            if (face.Lines[line].On(left) is { } cell) return cell.Space;
        }

        return from;
    }
}
