using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The overcurrent devices ahead of the feeder on either supply, as far as they are stated.</summary>
/// <remarks>Overcurrent protection of the transfer equipment's own is taken to be of the equipment's rating.</remarks>
public readonly record struct SupplyDevices(Amperes? Normal, Amperes? Standby, Amperes? OfTransfer)
{
    /// <summary>What protects the feeder on the supply that protects it least; nothing where nothing is stated.</summary>
    public Amperes? AheadOfFeeder
    {
        get
        {
            var larger = Larger(Normal, Standby);
            return OfTransfer is { } own && (larger is null || own < larger) ? own : larger;
        }
    }

    public static SupplyDevices Of(Schedule schedule) => new(
        schedule.Feeder?.Ocpd,
        schedule.Source?.Ocpd,
        schedule.Transfer is { IntegralOcpd: true, Rating: { } rating } ? rating : null);

    private static Amperes? Larger(Amperes? left, Amperes? right) =>
        left is null || right is null ? left ?? right : Amperes.Max(left.Value, right.Value);
}
