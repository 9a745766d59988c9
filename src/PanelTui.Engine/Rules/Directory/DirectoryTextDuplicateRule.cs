using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Directory;

/// <summary>Two lines of the directory that read alike.</summary>
public sealed class DirectoryTextDuplicateRule : CodeRule
{
    public override string Name => "directory-text-duplicate";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "Each circuit can be told from all the others by its name.";

    public override string Why => "With two breakers of one name nobody knows which of them to open.";

    public override string Advice => "Say what tells them apart: north and south, bench and wall.";

    public override CodeSection? Section { get; } = Nec.Section("408.4(A)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit is { IsSpare: false, Name.Length: > 0 }
        orderby circuit.Space
        group circuit by DirectoryWords.Plain(circuit.Name) into alike
        where alike.Skip(1).Any()
        select Found(
            context,
            alike.SelectMany(circuit => circuit.Spaces),
            $"Spaces {RuleWords.Listed(alike.Select(circuit => $"{circuit.Space}"))} have one name: {alike.First().Name}.");
}
