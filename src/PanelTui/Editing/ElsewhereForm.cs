using System.Collections.Immutable;

namespace PanelTui.Editing;

/// <summary>Asks for another file name to save under.</summary>
internal sealed class ElsewhereForm(string path) : Form
{
    public override ImmutableArray<FormField> Fields { get; } =
        [new("Save as", path, 0, "a new file name, by convention NAME.panel.yaml; an existing file is not overwritten")];

    public override bool Changes => false;

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts) =>
        session.Save(texts[0].Trim()) is { } problem ? new FormRefusal(0, problem.Message) : null;
}
