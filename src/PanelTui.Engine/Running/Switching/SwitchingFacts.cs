using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Running.Switching;

/// <summary>What of a schedule decides how it is switched over.</summary>
internal sealed record SwitchingFacts
{
    public required TransferKind? Kind { get; init; }

    public required bool IsManaged { get; init; }

    public required bool IsGenerator { get; init; }

    /// <summary>Two 120 V units, each on its leg.</summary>
    public required bool IsPair { get; init; }

    /// <summary>What the source is to the wiring: with no equipment and no grid written down it is alone here.</summary>
    public required SourceStanding Standing { get; init; }

    /// <summary>`from 25 % to 35 %`; nothing where nothing charges.</summary>
    public required string? Charging { get; init; }

    public required bool HasSolar { get; init; }

    /// <summary>`L14-30, behind a breaker of 30 A`; nothing where no outlet is written down.</summary>
    public required string? Outlet { get; init; }

    public bool IsPluggedIn => Outlet is not null;

    /// <summary>Sentences that name what stays off, and why.</summary>
    public required ImmutableArray<string> LeaveOff { get; init; }

    /// <summary>The end of a sentence that switches breakers on.</summary>
    public string NotLeftOff => LeaveOff.IsEmpty ? "" : "; not those to leave off";

    /// <summary>Circuits with a motor that are switched on, in the order that asks least of the source.</summary>
    public required ImmutableArray<Circuit> Motors { get; init; }

    /// <summary>Those of <see cref="Motors"/> that are too large even in that order, with nothing but motors on.</summary>
    public required ImmutableArray<Circuit> TooLarge { get; init; }

    /// <summary>Those that start in that order, but not once more with all that is on standby running.</summary>
    public required ImmutableArray<Circuit> TooLargeLater { get; init; }

    /// <summary>The moment in which automatic equipment closes on all of them; nothing where there are none.</summary>
    public required StartMoment? Together { get; init; }

    /// <summary>What the source gives, in words.</summary>
    public required string Limits { get; init; }

    public static SwitchingFacts Of(Assessment assessment)
    {
        var schedule = assessment.Schedule;
        var source = schedule.Source;
        var leftOff = LeftOff.Of(assessment);
        var run = ScenarioRun.OfAll(schedule, assessment.Connected.Loads);
        run = run.Without(leftOff.Circuits, schedule);
        var motors = run.Without([.. run.Circuits.Where(circuit => !HasMotor(circuit, run))], schedule).Starts.EasiestOrder;
        var tooLarge = Circuits([.. motors.Where(moment => moment.Ok == false)]);
        return new SwitchingFacts
        {
            Kind = schedule.Transfer?.Kind,
            IsManaged = schedule.Transfer is { LoadManagement: true },
            IsGenerator = source is { Kind: SourceKind.Generator },
            IsPair = source is { Arrangement: SourceArrangement.Split },
            Standing = NeutralVerdict.Of(schedule)?.Standing ?? SourceStanding.Unknown,
            Charging = source?.Charging is { From: ChargingFrom.Grid } charging ? $"from {charging.StartsAt} to {charging.StopsAt}" : null,
            HasSolar = source is { Solar: not null },
            Outlet = source?.Outlet is { } outlet ? outlet + (source.Ocpd is { } device ? $", behind a breaker of {device}" : "") : null,
            LeaveOff = leftOff.Sentences,
            Motors = Circuits(motors),
            TooLarge = tooLarge,
            TooLargeLater = [.. Circuits([.. run.Starts.Moments.Where(moment => moment.Ok == false)]).Where(circuit => !tooLarge.Contains(circuit))],
            Together = run.Starts.Together,
            Limits = LimitsOf(schedule),
        };
    }

    /// <summary>`Well pump (5), Air compressor (13)`.</summary>
    public static string Listed(IEnumerable<Circuit> circuits) =>
        string.Join(", ", circuits.Select(circuit => $"{circuit.Called} ({circuit.Space})"));

    private static bool HasMotor(Circuit circuit, ScenarioRun run) =>
        run.Starts.Moments.Any(moment => moment.Starting[0].Circuit.Ordinal == circuit.Ordinal);

    private static ImmutableArray<Circuit> Circuits(ImmutableArray<StartMoment> moments) =>
        [.. moments.Select(moment => moment.Starting[0].Circuit).DistinctBy(circuit => circuit.Ordinal)];

    private static string LimitsOf(Schedule schedule)
    {
        var limit = SourceLimit.Of(schedule.Source, schedule.Panel.System);
        var watts = limit.PerLeg is { } leg
            ? $"{Shown.Rounded(leg.Value, 0, "W")} on a leg, {Shown.Rounded(leg.Value * SourceBounds.Planned.Value / 100, 0, "W")} for hours"
            : "not stated, read the nameplate";
        return schedule.Source?.Ocpd is { } device ? $"{watts}; {device} at its breaker" : watts;
    }
}
