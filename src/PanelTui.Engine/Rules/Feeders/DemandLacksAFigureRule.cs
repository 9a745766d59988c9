using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;

namespace PanelTui.Engine.Rules.Feeders;

/// <summary>A method that works without a figure it asks for, or not at all, must not do so in silence.</summary>
public sealed class DemandLacksAFigureRule : CodeRule
{
    public override string Name => "demand-lacks-a-figure";

    public override Severity Severity => Severity.Note;

    public override string Summary => "The schedule states every figure that its demand method asks for.";

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
