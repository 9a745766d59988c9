using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Half of what it takes to tell whether the neutral is bonded once.</summary>
public sealed class NeutralBondNotRecordedRule : CodeRule
{
    public override string Name => "neutral-bond-not-recorded";

    public override Severity Severity => Severity.Note;

    public override string Summary =>
        "It is written down both whether the source's neutral is bonded and whether the transfer equipment "
        + "switches the neutral.";

    public override string Why =>
        "Only the two together tell whether the neutral is bonded once, twice or nowhere on standby.";

    public override string Advice =>
        "Read the nameplate of the source for source.neutral, and the label of the transfer equipment for "
        + "transfer.switches_neutral.";

    public override CodeSection? Section { get; } = Nec.Section("250.142(B)");

    public override IEnumerable<Finding> Check(RuleContext context) => context.Schedule switch
    {
        { Source.Neutral: not null, Transfer: { SwitchesNeutral: null } } =>
            [Found(context, "Whether the transfer equipment switches the neutral is not written down.")],
        { Source: { Neutral: null }, Transfer.SwitchesNeutral: not null } =>
            [Found(context, "Whether the source's neutral is bonded is not written down.")],
        _ => [],
    };
}
