using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Presentation;

/// <summary>What the source feels in a scenario, as text of at most 80 columns.</summary>
internal sealed class RunText(Assessment assessment, ScenarioRun run, RunRequest asked)
{
    private readonly Schedule _schedule = assessment.Schedule;

    public IEnumerable<string> Lines() =>
    [
        .. Title(),
        .. Section("What runs", RunningRows.Of(run, _schedule)),
        .. Section("What can start", StartRows.Of(run, _schedule)),
        .. OneUnit.Of(run, _schedule) is { } one ? Section("What if one unit stops", OneUnitRows.Of(one)) : [],
        .. Section("How long it lasts", EnduranceRows.Of(run, _schedule, asked)),
        .. Section("Neutral and bond", NeutralRows.Of(_schedule)),
        "",
        "Figures to plan by: check nameplates, measure, follow the equipment's manuals.",
    ];

    /// <summary>The course hour by hour; nothing without a battery.</summary>
    public IEnumerable<string> Table() =>
        EnergyCourse.Of(_schedule, run.AverageOn, asked.From, asked.StartHour, asked.ChargesIn(_schedule)) is { } course
            ? ["", .. EnduranceRows.Table(course)]
            : [];

    private IEnumerable<string> Title()
    {
        yield return DisplayText.Clean($"{_schedule.Panel.Name}: {run.Name}");
        yield return $"{Shown.Exactly(run.Circuits.Length)} circuits on standby, on {Source(_schedule.Source)}";
    }

    private static IEnumerable<string> Section(string title, IEnumerable<string> lines) =>
        lines.SelectMany(line => DisplayText.Width(line) <= 80 ? [line] : Wrapped.Of(line, 80)).Prepend(title.ToUpperInvariant()).Prepend("");

    private static string Source(StandbySource? source) => (source?.Kind, source?.Arrangement) switch
    {
        (null, _) or (_, null) => "no stated source",
        (SourceKind.Generator, SourceArrangement.InPhase) => "a 120 V generator on both legs, in phase",
        (SourceKind.Generator, SourceArrangement.Split or SourceArrangement.OneUnit) => "a generator",
        (SourceKind.Inverters, SourceArrangement.Split) => "two stacked 120 V inverters, each leg on its own",
        (SourceKind.Inverters, SourceArrangement.InPhase) => "one 120 V inverter on both legs, in phase",
        (SourceKind.Inverters, SourceArrangement.OneUnit) => "one inverter",
        (SourceKind.Generator or SourceKind.Inverters, var arrangement) => throw Unnamed.Of(arrangement),
        var (kind, _) => throw Unnamed.Of(kind),
    };
}
