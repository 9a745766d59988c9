using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Running.Switching;

/// <summary>Equipment that changes over by itself: what a person does is little, and most of it beforehand.</summary>
internal sealed class AutomaticWay(SwitchingFacts facts) : SwitchingWay
{
    /// <summary>A set that is plugged in is started by a person; one that is wired in starts by itself.</summary>
    private bool IsStartedByHand => facts is { IsGenerator: true, IsPluggedIn: true };

    public override IEnumerable<SwitchingStep> ToStandby =>
    [
        .. Beforehand(),
        IsStartedByHand
            ? new("When the grid fails, with the cable joined as above: start the generator with nothing on it and let it warm up; its outlet breaker ON. The equipment closes by itself when it finds the source steady.", (Handle.Engine, true), (Handle.Output, true))
            : new(facts.IsGenerator
                ? "When the grid fails, wait: the equipment starts the source and closes by itself."
                : facts.IsPair ? "When the grid fails, wait: the inverters take over by themselves." : "When the grid fails, wait: the inverter takes over by itself."),
        new(AllAtOnce()),
        new($"Look at the source's meter{(facts.HasOneLeg ? "" : ", leg by leg,")} and stay below the limits: {facts.Limits}."),
        new($"If the source shuts down: all branch breakers OFF, start {(facts.IsPair ? "both units" : "it")} again as the manual says, then ON one at a time{MotorsFirst()}{facts.NotLeftOff}."),
        new("If it does not close, keep off the handles: follow its manual for operation by hand."),
    ];

    public override IEnumerable<SwitchingStep> Back =>
    [
        new("Do nothing: it goes back by itself when the grid has been steady for its set time."),
        new("Look that it did: its lamps, and what hangs on this panel."),
        .. IsStartedByHand || !facts.IsGenerator
            ? SourceSteps.Stop(facts)
            : [new("Leave the generator's control on automatic: it runs on without load to cool down and stops by itself. Do not switch it off and take nothing apart.")],
        .. Afterwards(),
    ];

    public override SwitchingStep Disarm =>
        new("The selector of the automatic equipment to OFF, as its instructions say, so that it does not close by itself.", (Handle.Selector, false));

    public override SwitchingStep Arm => new("The selector back to automatic.", (Handle.Selector, true));

    private IEnumerable<SwitchingStep> Beforehand() => facts.LeaveOff.IsEmpty
        ? []
        : [new($"Before the grid fails: the breakers listed under LEAVE OFF to OFF{(facts.IsManaged ? ", save what its load management sheds by itself" : ", for the equipment does not know them")}.", (Handle.LeftOff, false))];

    private IEnumerable<SwitchingStep> Afterwards() => facts.LeaveOff.IsEmpty
        ? []
        : [new("What was left off ON again, one at a time; OFF once more before the next failure.", (Handle.LeftOff, true))];

    private string AllAtOnce() => facts.Together switch
    {
        null => "Everything that is on comes on at once.",
        _ when facts.IsManaged => "Everything that is on comes on at once, motors too, as far as the load management lets it: see in its settings that it staggers them.",
        { Ok: true } => "Everything that is on comes on at once, motors too; with all on standby, by the schedule, that is within what the source gives for a start.",
        { Ok: false } moment => $"Everything that is on comes on at once, motors too; with all on standby, by the schedule, that is {Asked(moment)}. Have the starts staggered, or leave motors off beforehand.",
        _ => "Everything that is on comes on at once, motors too; no surge that counts is written down, so whether the source starts them together is not to be told: ask its maker.",
    };

    private static string Asked(StartMoment moment) => moment.AskedOn(moment.WorstLeg) > moment.MayOn
        ? $"{Shown.Rounded(moment.AskedOn(moment.WorstLeg).Value, 0, "VA")} on leg {moment.WorstLeg}, more than it gives for a start"
        : $"{Shown.Rounded(moment.Asked.Total.Value, 0, "VA")} in all, more than it gives for a start";

    private string MotorsFirst() => facts.Motors.IsEmpty ? "" : $", what has a motor first: {SwitchingFacts.Listed(facts.Motors)}";
}
