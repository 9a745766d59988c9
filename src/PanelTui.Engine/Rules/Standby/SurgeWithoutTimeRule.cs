using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>A surge is a power for a time: without the time it is worth nothing.</summary>
public sealed class SurgeWithoutTimeRule : CodeRule
{
    public override string Name => "surge-without-time";

    public override Severity Severity => Severity.Note;

    public override string Summary => "A stated surge comes with the time for which the source gives it, half a second or more.";

    public override string Why =>
        "A small pump takes about half a second to start; many units give their surge for a tenth of one.";

    public override string Advice => "Look the time up in the manual of the source and write it under source.surge_time.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        SurgeLimit.Of(context.Schedule.Source, context.Panel.System).Worth switch
        {
            SurgeWorth.WithoutTime => [Found(context, "A surge is stated without its time; a start above continuous power is not to be told.")],
            SurgeWorth.TooShort => [Found(
                context, $"The surge lasts {context.Schedule.Source!.SurgeTime}; a start above continuous power is not to be told.")],
            SurgeWorth.NotStated or SurgeWorth.Counted => [],
            var worth => throw Unnamed.Of(worth),
        };
}
