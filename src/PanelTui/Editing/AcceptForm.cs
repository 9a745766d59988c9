using System.Collections.Immutable;
using PanelTui.Documents.Intents;
using PanelTui.Engine.Rules;

namespace PanelTui.Editing;

/// <summary>Asks why a finding is let stand; it is then listed apart, with the reason.</summary>
internal sealed class AcceptForm(Finding finding) : Form
{
    private string Space => finding.Spaces.IsEmpty ? "" : $"{finding.Spaces[0]}";

    public override ImmutableArray<FormField> Fields { get; } =
        [new("Because", "", 0, $"why {finding.Rule} may stand, for whoever reads it next; the file keeps it under accepted")];

    public override FormRefusal? Send(Session session, ImmutableArray<string> texts) =>
        session.Do(snapshot => AddAcceptance.In(snapshot, finding.Rule, Space, texts[0])) is { } reason ? new FormRefusal(0, reason) : null;

    public override void Preview(Session session, ImmutableArray<string> texts) =>
        session.Try(snapshot => AddAcceptance.In(snapshot, finding.Rule, Space, texts[0]));
}
