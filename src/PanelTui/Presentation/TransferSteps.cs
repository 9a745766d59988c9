using PanelTui.Engine;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>Going to standby and back with this panel's equipment, as a page to print: 78 columns, plain ASCII of its own.</summary>
/// <remarks>The order is common practice, no source; the equipment's instructions and local rules go before it.</remarks>
internal sealed class TransferSteps(Assessment assessment)
{
    private const int Columns = 78;

    private readonly Schedule _schedule = assessment.Schedule;

    private TransferKind? Kind => _schedule.Transfer?.Kind;

    private bool IsGenerator => _schedule.Source is { Kind: SourceKind.Generator };

    private bool IsInPhase => _schedule.Source is { Arrangement: SourceArrangement.InPhase };

    public static IEnumerable<string> Of(Assessment assessment)
    {
        var steps = new TransferSteps(assessment);
        return
        [
            DisplayText.Clean($"{assessment.Schedule.Panel.Name}: going to standby and back"),
            .. Wrapped.Of("The instructions of the equipment and local rules go before this page. If they differ, follow them.", Columns),
            .. Part("NEVER", "-", steps.Never()),
            .. Part("LEAVE OFF ON STANDBY", "-", steps.LeaveOff()),
            .. steps._schedule.Source?.Outlet is null ? [] : Part("CONNECTING THE CABLE", null, steps.Cable()),
            .. Part("TO STANDBY", null, steps.ToStandby()),
            .. Part("BACK TO THE GRID", null, steps.Back()),
            "",
            .. Wrapped.Of("Not written by the maker of any of this equipment. Keep beside the panel and try it once with someone who knows it.", Columns),
        ];
    }

    private static IEnumerable<string> Part(string title, string? bullet, IEnumerable<string> lines) =>
    [
        "",
        title,
        .. lines.SelectMany((line, index) => Hung(bullet ?? $"{Shown.Exactly(index + 1)}.", line)),
    ];

    private static IEnumerable<string> Hung(string mark, string line) =>
        Wrapped.Of(line, Columns - 4).Select((row, index) => $"{(index == 0 ? mark : ""),-3} {row}");

    private IEnumerable<string> Never()
    {
        yield return "Never join two supplies: the grid and the source, or two sources, must not both reach this panel. It kills line workers and burns equipment.";
        yield return "Never use a cord with a plug at both ends: its blades are live in the hand.";
        yield return Kind switch
        {
            TransferKind.Interlock => "Never defeat, remove or force the interlock.",
            TransferKind.Automatic => "Never work on the panel because it is dark: automatic equipment may close at any moment.",
            TransferKind.Manual => "Never leave the handle between its positions, and never switch it under load where its label forbids that.",
            _ => "Never connect the source while no transfer equipment is written down for this panel: find out first what keeps the supplies apart.",
        };
        if (IsGenerator) yield return "Never run a generator indoors, in a garage or near a window: its exhaust kills. Never fill a hot one.";
    }

    private IEnumerable<string> LeaveOff()
    {
        var off = _schedule.Circuits.Where(circuit => circuit is { Standby: false, IsSpare: false }).ToList();
        if (off.Count > 0) yield return $"Not on standby by the schedule: {Listed(off)}.";
        if (IsInPhase)
        {
            var dead = assessment.Connected.Loads.Where(load => !load.Placement.IsToNeutral).Select(load => load.Circuit).DistinctBy(circuit => circuit.Ordinal).ToList();
            if (dead.Count > 0) yield return $"Nothing between the legs, both are in phase: {Listed(dead)}.";
            foreach (var shared in SharedNeutral.Among(_schedule.Circuits, assessment.Connected.Loads))
                yield return $"Shared neutral, on which the currents would add unseen: {Listed(shared.Circuits)}.";
        }

        foreach (var run in assessment.Scenarios.Where(run => run.Binding is { Ok: false }))
            yield return $"For {run.Name} to fit: {Listed(Shedding.Of(run, _schedule).Shed)}, in this order.";
        yield return $"What has a motor, until it is its turn: one at a time{FirstToStart()}.";
    }

    private string FirstToStart() => assessment.Scenarios.FirstOrDefault(run => run.Starts.Moments.Length > 1) is { } run
        ? $", {DisplayText.Clean(run.Starts.EasiestOrder[0].Starting[0].Called)} first"
        : "";

    private IEnumerable<string> Cable()
    {
        yield return "Both supplies off first: the source's outlet breaker off, and the device that feeds this panel from the inlet off.";
        if (_schedule.Source is { Solar: not null }) yield return "Solar off: open its disconnect, so that nothing feeds the source while cables are joined.";
        yield return $"Check cord, plug and inlet: {_schedule.Source!.Outlet}{(_schedule.Source.Ocpd is { } device ? $", behind a breaker of {device}" : "")}. No damage, no adapter to a smaller one.";
        yield return "Inlet end first, then the source; turn locking plugs until they lock. Take apart in the reverse order.";
        if (_schedule.Source is { Solar: not null }) yield return "Solar on again when the source runs.";
    }

    private IEnumerable<string> ToStandby() => Kind switch
    {
        TransferKind.Automatic => Automatic(),
        TransferKind.Interlock => [.. Before(), "Main breaker (grid) OFF.", "Slide the interlock, then close the back-fed breaker of the source.", .. After()],
        TransferKind.Manual => [.. Before(), "Transfer switch from the grid through OFF to the source, in one firm movement.", .. After()],
        _ => ["No transfer equipment is written down, so there are no steps: do not connect the source."],
    };

    private IEnumerable<string> Back() => Kind switch
    {
        TransferKind.Automatic => ["Do nothing: it goes back by itself when the grid has been steady for its set time, and lets a generator cool down.", "Look that it did: its lamps, and the source at rest.", .. Restore()],
        TransferKind.Interlock => ["See that the grid is back and steady.", "Branch breakers OFF.", "Back-fed breaker of the source OFF.", "Slide the interlock back, then main breaker (grid) ON.", .. Restore()],
        TransferKind.Manual => ["See that the grid is back and steady.", "Branch breakers OFF.", "Transfer switch from the source through OFF to the grid.", .. Restore()],
        _ => ["Ask whoever installed it what keeps the supplies apart, and write it down under transfer."],
    };

    private IEnumerable<string> Before() =>
    [
        "See that it is the grid that failed and not a breaker.",
        "All branch breakers of this panel OFF.",
        IsGenerator ? "Start the generator with nothing on it and let it warm up; its outlet breaker ON." : "Switch the inverters' output on; read their state of charge and that no fault shows.",
    ];

    private IEnumerable<string> After() =>
    [
        "Branch breakers ON one at a time, the largest motor first, each leg watched on the source's meter; not those to leave off.",
        $"Stay below the limits: {Limits()}. After an overload shed by hand, then start the source again.",
    ];

    private IEnumerable<string> Automatic() =>
    [
        "Leave off what is listed above before the grid fails: the equipment does not know.",
        "When the grid fails, wait: the equipment starts the source and closes by itself.",
        $"Look at the source's meter, leg by leg, and stay below the limits: {Limits()}.",
        "If it does not close, keep off the handles: follow its manual for operation by hand.",
    ];

    private IEnumerable<string> Restore() =>
    [
        "Branch breakers ON one at a time.",
        IsGenerator ? "Let the generator run without load for some minutes, then stop it; disconnect the cord at the source first." : "Look that the inverters take the grid and charge as they are set to.",
    ];

    private string Limits()
    {
        var limit = SourceLimit.Of(_schedule.Source, _schedule.Panel.System);
        var watts = limit.PerLeg is { } leg ? $"{leg} on a leg, {Shown.Rounded(leg.Value * SourceBounds.Planned.Value / 100, 0, "W")} for hours" : "not stated, read the nameplate";
        return _schedule.Source?.Ocpd is { } device ? $"{watts}; {device} at its breaker" : watts;
    }

    private static string Listed(IEnumerable<Circuit> circuits) =>
        string.Join(", ", circuits.Select(circuit => DisplayText.Clean($"{circuit.Called} ({circuit.Space})")));
}
