using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Presentation;

/// <summary>What the source gives for a start, in a sentence.</summary>
internal sealed record StandbySurge(StandbySource? Source, PanelSystem System)
{
    public string Words
    {
        get
        {
            var surge = SurgeLimit.Of(Source, System);
            return surge.Worth switch
            {
                SurgeWorth.NotStated => "No surge is stated: starts are held against continuous power.",
                SurgeWorth.WithoutTime => "A surge without its time (surge_time) is worth nothing: held against continuous power.",
                SurgeWorth.TooShort => $"A surge of {Source!.SurgeTime} is over before a motor runs (0.3 to 1 s): it is not counted.",
                _ => $"Surge for {Source!.SurgeTime}: {Parts(surge)}.",
            };
        }
    }

    private static string Parts(SurgeLimit surge) => string.Join(
        ", ",
        new[] { (surge.PerLeg, "on each leg"), (surge.InAll, "in all") }
            .Where(part => part.Item1 is not null)
            .Select(part => $"{Shown.Rounded(part.Item1!.Value.Value, 0, "VA")} {part.Item2}"));
}
