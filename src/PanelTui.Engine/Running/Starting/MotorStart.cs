using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>What one motor-like load draws at the moment it starts. Of several alike one starts, and the others run.</summary>
public sealed record MotorStart(PlacedLoad Load, StartBasis Basis)
{
    public Circuit Circuit => Load.Circuit;

    public string Called => Circuit.Called;

    public Amperes FullLoad => StartReckoning.FullLoad(Load);

    /// <summary>With its soft starter, where it has one.</summary>
    public VoltAmperes Power => Load.Load.SoftStart is { } less
        ? Basis.AcrossTheLine * new Percent(100 - Math.Clamp(less.Value, 0, 100))
        : Basis.AcrossTheLine;

    /// <summary>The current that goes with <see cref="Power"/>: with no soft starter the locked-rotor current.</summary>
    public Amperes Current => StartReckoning.CurrentOf(Power, Load);

    /// <summary>The starting power in its place.</summary>
    public LegLoads Legs => Load.Placement.Put(Power);

    /// <summary>The starting power of all those alike.</summary>
    public LegLoads LegsOfAll => Load.Placement.Put(new VoltAmperes(Bounded.Product(Power.Value, Math.Max(1, Load.Load.Count))));

    /// <summary>What the one that starts takes once it runs, in its place.</summary>
    public LegLoads Running => Load.Load.Count <= 1 ? Load.RunningLegs : Load.RunningLegs * new Percent(100m / Load.Load.Count);

    /// <summary>The basis with the soft starter's part: `6x of full load, 8.0 A, less 60 % by its soft starter`.</summary>
    public string Words => Load.Load.SoftStart is { } less ? $"{Basis.Words}, less {less} by its soft starter" : Basis.Words;

    /// <summary>A motor, or a load that is stated to draw more when it starts; nothing that cannot be worked out.</summary>
    public static bool IsMotorLike(PlacedLoad load) =>
        (load.IsMotor || load.Load.Start is not Start.Times { Factor: <= 1 }) && load.Size.IsKnown;

    public static MotorStart Of(PlacedLoad load, CodeEdition edition) => new(load, StartReckoning.Of(load, edition));
}
