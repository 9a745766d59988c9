using System.Collections.Immutable;
using PanelTui.Editing;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Commands;

/// <summary>Puts half of a tandem breaker into the space under the cursor: the upper half first, then the lower.</summary>
internal sealed class PlaceTandemCommand : EditorCommand
{
    public override ImmutableArray<Key> Keys => [Key.T];

    public override string KeyName => "t";

    public override string Title => "Place one half of a tandem breaker";

    public override string? Hint => "tandem";

    public override EditorMode Modes => EditorMode.Face;

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor)
    {
        var (schedule, cursor) = (editor.Session.Schedule, editor.Session.Cursor);
        if (editor.Session.Here is { } taken) return $"Space {taken.Space} holds {CircuitText.NameOf(taken)}{OtherHalf(schedule, taken.Space)}";
        return schedule.Panel.TandemSpaces.Contains(cursor.Number)
            ? null
            : $"Space {cursor.Number} is not one where the listing allows tandem breakers (a, p: Spaces for tandems)";
    }

    /// <summary>Where the other half of a tandem may still go.</summary>
    private static string OtherHalf(Schedule schedule, SpaceNumber taken)
    {
        if (!taken.IsHalf) return "";
        var other = taken.With(taken.Half == SpaceHalf.A ? SpaceHalf.B : SpaceHalf.A);
        return schedule.Circuits.Any(circuit => circuit.Spaces.Contains(other)) ? "" : $"; {other} is open: go there, then t";
    }

    public override void Run(IEditor editor)
    {
        var cursor = editor.Session.Cursor;
        editor.Open(new NewCircuitForm(cursor.IsHalf ? cursor : cursor.With(SpaceHalf.A), 1));
    }
}
