using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// The scenario that loads the legs most unevenly, judged by what runs and not by the sum of the breakers.
/// </summary>
public sealed class LegsUnevenRule : CodeRule
{
    /// <summary>Of the mean of the legs; on two legs that is the difference over the total.</summary>
    /// <remarks>
    /// Common practice; the code says only that loads are evenly proportioned (210.11(B)). For generator sets a trade forum has
    /// 25 % of the total current (steelsoldiers.com, thread 97953); for services a utility handbook quoted in another has 10 %
    /// (forums.mikeholt.com, thread 51445), and an Army course, EN0389, the same.
    /// </remarks>
    public static readonly Percent Most = 25.Pct;

    /// <summary>A leg below half of what the source gives it has room enough, however empty the other is.</summary>
    /// <remarks>Common practice, no source.</remarks>
    private const int Half = 2;

    public override string Name => "legs-uneven";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "In no scenario does a leg that carries more than half of what it may stand more than 25 % off the mean of "
        + "the legs.";

    public override string Why =>
        "One winding or one unit works hard while the other idles: there is less room for starting motors, and the "
        + "voltages drift apart.";

    public override string Advice =>
        "Move a one-pole circuit of the heavier leg to a space on the lighter one; the heaviest ones first.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Source is not { Arrangement: not SourceArrangement.InPhase })
            return [];
        var worst = context.Scenarios.Where(IsHeavy).MaxBy(ImbalanceOf);
        return worst is not null && ImbalanceOf(worst) > Most ? [Uneven(context, worst)] : [];
    }

    private Finding Uneven(RuleContext context, ScenarioRun run) => Found(
        context,
        OneLegSpaces(run),
        $"{run.Name} runs {RuleWords.Listed(run.Legs.Legs.Select(leg => $"{Rounded(run.Legs[leg].Running)} on leg {leg}"))}: "
        + $"{RuleWords.Beyond(ImbalanceOf(run).Value, Most.Value, "%")} off their mean, where {Most} is the most.");

    private static Percent ImbalanceOf(ScenarioRun run) =>
        Imbalance.Of(run.Legs.Values.Select(leg => leg.Running.Value));

    private static Leg HeaviestOf(ScenarioRun run) => run.Legs.Legs.MaxBy(leg => run.Legs[leg].Running);

    private static bool IsHeavy(ScenarioRun run) =>
        run.Legs[HeaviestOf(run)] is { Limit: { } limit } heaviest && heaviest.Running > limit / Half;

    /// <summary>What can be moved: loads to neutral on the heavier leg.</summary>
    private static IEnumerable<SpaceNumber> OneLegSpaces(ScenarioRun run) => run.Loads
        .Where(load => load.Placement.IsToNeutral && load.Placement.Legs[0] == HeaviestOf(run))
        .Select(load => load.Circuit.Space)
        .Distinct();

    private static string Rounded(Watts power) => Shown.Rounded(power.Value, 0, "W");
}
