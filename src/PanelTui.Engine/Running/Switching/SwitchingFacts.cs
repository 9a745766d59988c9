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

    /// <summary>One leg and a neutral, so that there is nothing to compare.</summary>
    public required bool HasOneLeg { get; init; }

    /// <summary>Where the neutral is bonded; nothing without a source.</summary>
    public required NeutralVerdict? Neutral { get; init; }

    /// <summary>With no equipment and no grid written down the source is alone here.</summary>
    public bool IsAlone => Neutral is { IsInferred: true };

    /// <summary>Transfer equipment is written down, and so there is a grid before it.</summary>
    public bool HasGrid => Kind is not null;

    /// <summary>`inverters` of a pair, else `inverter`.</summary>
    public string UnitName => IsPair ? "inverters" : "inverter";

    /// <summary>`the inverters' output`.</summary>
    public string OutputName => IsPair ? "the inverters' output" : "the inverter's output";

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

    /// <summary>Circuits with a motor that start, in the order that asks least of the source.</summary>
    public required ImmutableArray<Circuit> Motors { get; init; }

    /// <summary>Circuits with a motor that does not start in that order either, with nothing but motors on; they are not in <see cref="Motors"/>.</summary>
    public required ImmutableArray<Circuit> TooLarge { get; init; }

    /// <summary>Those that start in that order, but not once more with all that is on standby running.</summary>
    public required ImmutableArray<Circuit> TooLargeLater { get; init; }

    /// <summary>Those of <see cref="Motors"/> of which nothing tells whether the source starts them, in that order.</summary>
    public required ImmutableArray<Circuit> NotTold { get; init; }

    /// <summary>Those that start in that order, and of which nothing tells whether they do once more with all running.</summary>
    public required ImmutableArray<Circuit> NotToldLater { get; init; }

    /// <summary>Why a start is not to be told.</summary>
    public required string WhyNotTold { get; init; }

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
        var motors = run.Without([.. run.Circuits.Where(circuit => !HasMotor(circuit, run))], schedule);
        var tooLarge = NotStarting(motors, schedule);
        var order = motors.Without(tooLarge, schedule).Starts.EasiestOrder;
        var later = run.Without(tooLarge, schedule).Starts.Moments;
        var notTold = Circuits(order, null);
        return new SwitchingFacts
        {
            Kind = schedule.Transfer?.Kind,
            IsManaged = schedule.Transfer is { LoadManagement: true },
            IsGenerator = source is { Kind: SourceKind.Generator },
            IsPair = source is { Arrangement: SourceArrangement.Split },
            HasOneLeg = schedule.Panel.System.Legs.Length == 1,
            Neutral = NeutralVerdict.Of(schedule),
            Charging = source?.Charging is { } charging ? FromTheGrid(charging) : null,
            HasSolar = source is { Solar: not null },
            Outlet = source?.Outlet is { } outlet ? outlet + (source.Ocpd is { } device ? $", behind a breaker of {device}" : "") : null,
            LeaveOff = schedule.Transfer is { Kind: TransferKind.Automatic } && tooLarge.Length > 0
                ? [.. leftOff.Sentences, $"By the schedule the source does not start it, not even before the rest: {Listed(tooLarge)}."]
                : leftOff.Sentences,
            Motors = Circuits(order),
            TooLarge = tooLarge,
            TooLargeLater = Circuits(later, false),
            NotTold = notTold,
            NotToldLater = [.. Circuits(later, null).Except(notTold)],
            WhyNotTold = run.Starts.Continuous is { PerLeg: null, InAll: null }
                ? "nothing is written down of what the source gives"
                : "it is more than its continuous power, and no surge that counts is written down",
            Together = run.Starts.Together,
            Limits = LimitsOf(schedule),
        };
    }

    /// <summary>`Well pump (5), Air compressor (13)`.</summary>
    public static string Listed(IEnumerable<Circuit> circuits) =>
        string.Join(", ", circuits.Select(circuit => $"{circuit.Called} ({circuit.Space})"));

    /// <summary>A sentence's beginning.</summary>
    public static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>What does not start in the easiest order, and so does not run as the next one starts.</summary>
    private static ImmutableArray<Circuit> NotStarting(ScenarioRun motors, Schedule schedule)
    {
        var not = ImmutableArray.CreateBuilder<Circuit>();
        while (Circuits(motors.Starts.EasiestOrder, false) is [var first, ..])
        {
            not.Add(first);
            motors = motors.Without(first, schedule);
        }

        return not.ToImmutable();
    }

    private static string? FromTheGrid(Charging charging) => charging.From switch
    {
        ChargingFrom.Grid => $"from {charging.StartsAt} to {charging.StopsAt}",
        ChargingFrom.Generator or ChargingFrom.Solar => null,
        _ => throw Unnamed.Of(charging.From),
    };

    private static bool HasMotor(Circuit circuit, ScenarioRun run) =>
        run.Starts.Moments.Any(moment => moment.Starting[0].Circuit.Ordinal == circuit.Ordinal);

    private static ImmutableArray<Circuit> Circuits(ImmutableArray<StartMoment> moments, bool? ok) =>
        Circuits([.. moments.Where(moment => moment.Ok == ok)]);

    private static ImmutableArray<Circuit> Circuits(ImmutableArray<StartMoment> moments) =>
        [.. moments.Select(moment => moment.Starting[0].Circuit).DistinctBy(circuit => circuit.Ordinal)];

    private static string LimitsOf(Schedule schedule)
    {
        var limit = SourceLimit.Of(schedule.Source, schedule.Panel.System);
        var watts = limit.PerLeg is { } leg
            ? $"{Shown.Rounded(leg.Value, 0, "W")}{Where(schedule)}, {Shown.Rounded(leg.Value * SourceBounds.Planned.Value / 100, 0, "W")} for hours"
            : "not stated, read the nameplate";
        return schedule.Source?.Ocpd is { } device ? $"{watts}; {device} at its breaker" : watts;
    }

    /// <summary>One 120 V unit on both legs gives no leg more than it gives both.</summary>
    private static string Where(Schedule schedule) => (schedule.Panel.System.Legs.Length, schedule.Source?.Arrangement) switch
    {
        (1, _) => "",
        (_, SourceArrangement.InPhase) => " on both legs together",
        (_, SourceArrangement.Split or SourceArrangement.OneUnit or null) => " on a leg",
        var (_, arrangement) => throw Unnamed.Of(arrangement),
    };
}
