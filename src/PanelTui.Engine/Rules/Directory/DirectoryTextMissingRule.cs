using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Directory;

/// <summary>A breaker that feeds something has a line in the directory.</summary>
public sealed class DirectoryTextMissingRule : CodeRule
{
    public override string Name => "directory-text-missing";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Each circuit says what it feeds, and a breaker that feeds nothing is marked spare.";

    public override string Why => "Whoever opens the door cannot tell what goes dark with this breaker.";

    public override string Advice => "Write what it feeds under name, or spare: yes.";

    public override CodeSection? Section { get; } = Nec.Section("408.4(A)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit is { IsSpare: false, Name.Length: 0 }
        select Found(context, circuit.Spaces, $"The breaker at space {circuit.Space} has no name for the directory.");
}
