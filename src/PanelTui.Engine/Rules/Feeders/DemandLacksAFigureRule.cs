using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>A method that works without a figure it asks for, or not at all, must not do so in silence.</summary>
public sealed class DemandLacksAFigureRule : CodeRule
{
    public override string Name => "demand-lacks-a-figure";

    public override Severity Severity => Severity.Note;

    public override string Summary => "The schedule states every figure that its demand method asks for.";

    public override string Why =>
        "Without it the calculated load is missing, or rests on what happens to be connected.";

    public override string Advice =>
        "Add the figure that the method asks for, or choose a method that does without it.";

    public override CodeSection? Section { get; } = Nec.Section("Article 220");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var basis = context.Schedule.Demand;
        if (DemandBook.For(basis.Method).Lacks(basis) is { } lacking)
        {
            yield return Found(
                context,
                $"Demand method {basis.Method.Word} asks for {lacking.Key}, which is not stated: {lacking.Otherwise}.",
                lacking.Mend);
        }
    }
}
