using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Directory;

/// <summary>A line of the directory that would fit any circuit.</summary>
public sealed class DirectoryTextVagueRule : CodeRule
{
    public override string Name => "directory-text-vague";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "Each circuit is described by its clear and specific purpose.";

    public override string Why =>
        "Words such as lights or outlets fit any circuit, and send people to the wrong breaker.";

    public override string Advice => "Say where it is or what it feeds: not Lights but Cold room lights.";

    public override CodeSection? Section { get; } = Nec.Section("408.4(A)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit is { IsSpare: false, Name.Length: > 0 } && DirectoryWords.IsGeneral(circuit.Name)
        select Found(context, circuit.Spaces, $"{RuleWords.Place(circuit)}: the name would fit any circuit.");
}
