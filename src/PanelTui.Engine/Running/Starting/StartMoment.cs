using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Starting;

/// <summary>The moment in which one load or several start while the rest runs, leg by leg.</summary>
/// <param name="Starting">Those that start.</param>
/// <param name="Asked">What all legs carry in that moment.</param>
/// <param name="Surge">What the source gives for a start.</param>
/// <param name="Continuous">What it gives for as long as it runs; a start within that needs no surge.</param>
public sealed record StartMoment(ImmutableArray<MotorStart> Starting, LegLoads Asked, SurgeLimit Surge, SourceLimit Continuous)
{
    public VoltAmperes AskedOn(Leg leg) => Asked.VoltAmperesOn(leg);

    /// <summary>What a leg may carry in that moment: the surge, or where none counts the continuous power.</summary>
    public VoltAmperes? MayOn => Surge.PerLeg ?? Va(Continuous.PerLeg);

    public VoltAmperes? MayInAll => Surge.InAll ?? (Surge.Worth == SurgeWorth.Counted ? null : Va(Continuous.InAll));

    /// <summary>Whether the source carries it; nothing where only a surge could, and none is stated that counts.</summary>
    public bool? Ok
    {
        get
        {
            if (MayOn is null && MayInAll is null)
                return null;
            if (Fits)
                return true;
            return Surge.Worth == SurgeWorth.Counted ? false : null;
        }
    }

    /// <summary>How much of the nearest limit it asks for, in per cent; without a limit the volt-amperes of the worst leg.</summary>
    public decimal Weight => Asked.System.Legs.Select(leg => Share(AskedOn(leg), MayOn)).Append(Share(Asked.Total, MayInAll)).Max();

    /// <summary>The leg that asks most.</summary>
    public Leg WorstLeg => Asked.System.Legs.MaxBy(AskedOn);

    private bool Fits => Asked.System.Legs.All(leg => !(AskedOn(leg) > MayOn)) && !(Asked.Total > MayInAll);

    private static VoltAmperes? Va(Watts? power) => power is { } watts ? new VoltAmperes(watts.Value) : null;

    private decimal Share(VoltAmperes asked, VoltAmperes? may) => may switch
    {
        { Value: > 0.001m } limit => Math.Min(asked.Value / limit.Value, Most) * 100,
        null when MayOn is null && MayInAll is null => asked.Value,
        null => 0,
        _ => Most * 100,
    };

    private const decimal Most = 1_000_000;
}
