using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>How the ratings of devices and equipment come about.</summary>
public static class SizingDerivations
{
    public static Derivation Why(this FeederSizing feeder) => new(
        FigureNames.FeederDevice,
        "Overcurrent device of the feeder",
        [
            new DerivationStep(
                "Minimum ampacity of the worst leg", feeder.Required.Value, "A", FeederSizing.Section.In(feeder.Edition)),
            Rating(feeder.StandardOcpd, "No standard rating is as large", StandardRatings.Section.In(feeder.Edition)),
        ]);

    public static Derivation Why(this TransferRating transfer) => new(
        FigureNames.TransferRating,
        "Rating of the transfer equipment",
        [
            Given("Minimum ampacity of the worst leg", transfer.MinimumAmpacity, Citation.Arithmetic),
            .. Devices(transfer),
            Given("The largest of these", transfer.Required, TransferRatings.Cite),
            Rating(transfer.Standard, "No rating made is as large", TransferRatings.Cite),
        ]);

    private static IEnumerable<DerivationStep> Devices(TransferRating transfer)
    {
        if (transfer.HasOwnDevice)
            yield return Given("It has overcurrent protection of its own", transfer.MinimumAmpacity, Citation.Schedule);
        if (transfer.FeederDevice is { } feeder)
            yield return Given("Device ahead on the normal supply", feeder, Citation.Schedule);
        if (transfer.SourceDevice is { } source)
            yield return Given("Device ahead on the standby supply", source, Citation.Schedule);
    }

    private static DerivationStep Given(string label, Amperes current, Citation cite) =>
        new(label, current.Value, "A", cite);

    private static DerivationStep Rating(Amperes? rating, string none, Citation cite) => rating is { } found
        ? Given("The smallest rating not below that", found, cite)
        : Given(none, Amperes.Zero, cite);
}
