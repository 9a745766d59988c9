using System.Collections.Immutable;
using System.Globalization;
using PanelTui.Editing;
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

    public override bool Changes => true;

    public override string? WhyNot(IEditor editor) =>
        OpenSpace.WhyNot(editor.Session.Schedule, editor.Session.Cursor, poles);

    public override void Run(IEditor editor) => editor.Open(new NewCircuitForm(editor.Session.Cursor, poles));
}
