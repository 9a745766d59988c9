using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The links that both supplies share: each is held against the larger of the two devices ahead.</summary>
internal sealed class FeederLinks(Schedule schedule)
{
    private readonly SupplyDevices _devices = SupplyDevices.Of(schedule);

    public IEnumerable<ChainLink> All => [Transfer, Device, Conductor, Main, Bus];

    /// <summary>With overcurrent protection of its own, nothing ahead has to protect it.</summary>
    private ChainLink Transfer => new(
        LinkKind.Transfer,
        "the transfer equipment",
        schedule.Transfer?.Rating,
        null,
        schedule.Transfer is { IntegralOcpd: true } ? null : _devices.AheadOfFeeder,
        Citation.Schedule);

    private ChainLink Device => new(
        LinkKind.FeederDevice, "the feeder's device on the normal supply", schedule.Feeder?.Ocpd, null, null, Citation.Schedule);

    private ChainLink Conductor
    {
        get
        {
            var fit = schedule.Feeder?.Conductor is { } stated ? Conditions.Fit(stated) : null;
            return new ChainLink(
                LinkKind.FeederConductor,
                schedule.Feeder?.Conductor is { } wire ? $"the feeder's conductors, {wire}" : "the feeder's conductors",
                fit?.Ampacity,
                fit is null ? null : new ConductorProtection(true, true, schedule.Code.Edition).Largest(fit),
                _devices.AheadOfFeeder,
                ConductorAmpacity.Section.In(schedule.Code.Edition));
        }
    }

    private ChainLink Main => new(
        LinkKind.Main,
        schedule.Panel.Main is { Rating: null } ? "the main, lugs alone" : "the main breaker",
        schedule.Panel.Main?.Rating,
        null,
        null,
        Citation.Schedule);

    private ChainLink Bus => new(LinkKind.Bus, "the bus", schedule.Panel.Bus, null, AheadOfBus, Citation.Schedule);

    private Amperes? AheadOfBus => (schedule.Panel.Main?.Rating, _devices.AheadOfFeeder) switch
    {
        ({ } main, { } ahead) => main < ahead ? main : ahead,
        (var main, var ahead) => main ?? ahead,
    };

    private WiringConditions Conditions =>
        WiringConditions.OfFeeder(schedule, _devices.AheadOfFeeder ?? schedule.Panel.Main?.Rating ?? Amperes.Zero);
}
