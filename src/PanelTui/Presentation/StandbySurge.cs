using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
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
                SurgeWorth.NotStated => $"No surge is stated: {Otherwise}",
                SurgeWorth.WithoutTime => $"A surge without its time (surge_time) is worth nothing: {Otherwise}",
                SurgeWorth.TooShort => $"A surge of {Source!.SurgeTime} is over before a motor runs (0.3 to 1 s) and not counted: {Otherwise}",
                SurgeWorth.Counted => $"Surge for {Source!.SurgeTime}: {Parts(surge)}.",
                _ => throw Unnamed.Of(surge.Worth),
            };
        }
    }

    /// <summary>What is left to judge a start by.</summary>
    private string Otherwise => SourceLimit.Of(Source, System) is { PerLeg: null, InAll: null }
        ? "no start is to be told."
        : "a start within continuous power needs none, one above it is not to be told.";

    private static string Parts(SurgeLimit surge) => string.Join(
        ", ",
        new[] { (surge.PerLeg, "on each leg"), (surge.InAll, "in all") }
            .Where(part => part.Item1 is not null)
            .Select(part => $"{Shown.Rounded(part.Item1!.Value.Value, 0, "VA")} {part.Item2}"));
}
