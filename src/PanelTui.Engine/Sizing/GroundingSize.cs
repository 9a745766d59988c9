using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The equipment grounding conductor of a circuit: by its device, and larger where the phases were enlarged.</summary>
/// <param name="Device">The overcurrent device ahead.</param>
/// <param name="ByDevice">By the table alone; nothing above its end.</param>
/// <param name="Enlarged">How many times the area of the smallest phase conductor the phases have; 1 where not enlarged.</param>
/// <param name="Conductor">What it comes to, no larger than the phases: 250.122(A).</param>
public sealed record GroundingSize(Amperes Device, Conductor? ByDevice, decimal Enlarged, Conductor? Conductor)
{
    public static readonly CodeSection EnlargedSection = Nec.Section("250.122(B)");

    public static readonly CodeSection MostSection = Nec.Section("250.122(A)");

    /// <summary>What makes it as large as it is: the phases' own size, their enlargement, or the device alone.</summary>
    public CodeSection Section =>
        Conductor is { } found && ByDevice is { } byDevice && found.Size < byDevice.Size ? MostSection
        : Enlarged > 1 ? EnlargedSection
        : GroundingConductor.Section;

    /// <param name="device">The overcurrent device ahead.</param>
    /// <param name="smallest">The smallest phase conductor that would do.</param>
    /// <param name="phases">The phase conductor there is.</param>
    public static GroundingSize Of(Amperes device, Conductor smallest, Conductor phases)
    {
        var byDevice = GroundingConductor.Find(device, phases.Metal);
        var enlarged = Ratio(smallest.Size, phases.Size);
        return new GroundingSize(device, byDevice, enlarged, byDevice is null ? null : Sized(byDevice, enlarged, phases));
    }

    private static Conductor Sized(Conductor byDevice, decimal enlarged, Conductor phases)
    {
        var size = enlarged <= 1 ? byDevice.Size
            : ConductorResistance.OfArea(ConductorResistance.AreaOf(byDevice.Size).GetValueOrDefault() * enlarged);
        return size is { } found && found < phases.Size ? byDevice with { Size = found } : phases;
    }

    private static decimal Ratio(ConductorSize smallest, ConductorSize phases) =>
        ConductorResistance.AreaOf(smallest) is { } least && ConductorResistance.AreaOf(phases) is { } has && has > least
            ? (decimal)has / least
            : 1;
}
