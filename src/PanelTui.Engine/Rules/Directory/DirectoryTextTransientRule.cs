using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Directory;

/// <summary>A line of the directory that holds only as long as the same people are there.</summary>
public sealed class DirectoryTextTransientRule : CodeRule
{
    public override string Name => "directory-text-transient";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "No circuit is described by whoever uses the room, or by what is there for now.";

    public override string Why => "People move on and the label stays.";

    public override string Advice => "Name the place or the equipment: not Sam's room but North-east bedroom.";

    public override CodeSection? Section { get; } = Nec.Section("408.4(A)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where !circuit.IsSpare
        let word = DirectoryWords.PassingWord(circuit.Name)
        where word is not null
        select Found(
            context, circuit.Spaces, $"{RuleWords.Place(circuit)}: the word {word} holds only for who or what is there now.");
}
