using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>How large the breaker of a motor circuit may be: usually, and where the motor will not start on that.</summary>
/// <param name="Motor">The current that counts: of the largest motor on the circuit.</param>
/// <param name="Others">What else runs on it at 100 %.</param>
/// <param name="Usual">A standard rating.</param>
/// <param name="Most">A standard rating, never below the usual one.</param>
/// <param name="Section">Where the percentages stand.</param>
public sealed record DeviceRange(Amperes Motor, Amperes Others, Amperes Usual, Amperes Most, CodeSection Section)
{
    /// <summary>Small motors share general circuits, 430.53(A): at 120 V and 6 A each, behind 20 A. From memory.</summary>
    private static readonly (Amperes Motor, Amperes Device) General = (6.A, 20.A);

    /// <summary>A maximum on the nameplate of a compressor goes before these, and is not known here.</summary>
    public bool IsForCompressor => Section == CompressorDevice.Section;

    /// <summary>Nothing for a circuit that feeds more than motors, or none, or only some with a maximum on the nameplate.</summary>
    public static DeviceRange? Of(ImmutableArray<PlacedLoad> loads, Amperes inAll, CodeEdition edition)
    {
        var largest = default((PlacedLoad? Load, Amperes Current));
        foreach (var load in loads)
        {
            if (!load.IsMotor || load.Load.MaximumOvercurrentProtection is not null)
                return null;
            if (load.OneOfThem.WorstAmperes > largest.Current)
                largest = (load, load.OneOfThem.WorstAmperes);
        }
        if (largest.Load is null)
            return null;
        var others = inAll > largest.Current ? inAll - largest.Current : Amperes.Zero;
        return IsCompressor(largest.Load)
            ? Compressor(largest.Current, others, edition)
            : Motors(largest.Load, largest.Current, others, edition);
    }

    /// <summary>A compressor's plate gives a power or a current; a motor to drive one has horsepower.</summary>
    private static bool IsCompressor(PlacedLoad load) =>
        load.Load.Kind is LoadKind.Cooling or LoadKind.HeatPump && load.Load.Rating is not LoadRating.InHorsepower;

    /// <summary>One motor takes the next rating up, 430.52(C)(1); with others beside it the next one down, 430.62(A).</summary>
    private static DeviceRange Motors(PlacedLoad load, Amperes motor, Amperes others, CodeEdition edition)
    {
        var floor = load.Placement.IsToNeutral && motor <= General.Motor ? General.Device : Amperes.Zero;
        var usual = motor * MotorDevice.Breaker;
        var up = others == Amperes.Zero
            ? StandardRatings.NextUp(usual, edition) ?? Down(usual, edition)
            : Down((StandardRatings.NextUp(usual, edition) ?? usual) + others, edition);
        var most = Down((motor * MotorDevice.MostBreaker(motor)) + others, edition);
        return new DeviceRange(motor, others, AtLeast(up), AtLeast(Amperes.Max(floor, Amperes.Max(up, most))), MotorDevice.Section);
    }

    private static DeviceRange Compressor(Amperes motor, Amperes others, CodeEdition edition) => new(
        motor,
        others,
        AtLeast(Down((motor * CompressorDevice.Usual) + others, edition)),
        AtLeast(Down((motor * CompressorDevice.Most) + others, edition)),
        CompressorDevice.Section);

    private static Amperes Down(Amperes current, CodeEdition edition) =>
        StandardRatings.NextDown(current, edition) ?? Amperes.Zero;

    private static Amperes AtLeast(Amperes rating) => Amperes.Max(rating, BranchSizing.SmallestBreaker);
}
