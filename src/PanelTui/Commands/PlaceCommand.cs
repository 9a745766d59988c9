using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Puts a one-, two- or three-pole breaker into the open space under the cursor.</summary>
internal sealed class PlaceCommand(int poles, string title, params Key[] keys) : EditorCommand
{
    public override ImmutableArray<Key> Keys { get; } = [.. keys];

    public override string KeyName => poles.ToString(CultureInfo.InvariantCulture);

    public override string Title => title;

    public override string? Hint => poles == 1 ? "place" : null;

    public override string HintKey => "1 2 3";

    public override EditorMode Modes => EditorMode.Face;

    public override string? WhyNot(IEditor editor)
    {
        var schedule = editor.Session.Schedule;
        var cursor = editor.Session.Cursor;
        if (editor.Session.Here is { } taken) return $"Space {cursor} holds {CircuitText.NameOf(taken)}";
        if (poles > schedule.Panel.System.MostPoles)
            return $"{schedule.Panel.System} has {schedule.Panel.System.MostPoles} legs: no breaker here has {poles} poles";
        var wanted = new Breaker(default, poles).SpacesFrom(cursor).ToList();
        if (wanted.Find(space => !schedule.Panel.Has(space)) is { Number: > 0 } past)
            return $"{poles} poles from space {cursor} down would need space {past}, past the last one";
        var meets = schedule.Circuits.FirstOrDefault(circuit => circuit.Spaces.Any(space => wanted.Exists(space.Overlaps)));
        return meets is null ? null : $"{poles} poles from space {cursor} down would meet {CircuitText.NameOf(meets)}";
    }

    public override void Run(IEditor editor) => editor.PlaceHere(poles, editor.Session.Cursor);
}
