using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;

namespace PanelTui.Engine.Running.Starting;

/// <summary>How the starts of a scenario come about, the one that asks most last.</summary>
public static class StartDerivation
{
    /// <summary>Nothing where nothing has a motor.</summary>
    public static Derivation? WhyStarting(this ScenarioRun run, CodeEdition edition) => run.Starts.Worst is not { } worst
        ? null
        : new Derivation(
            FigureNames.OfScenario(FigureNames.Starting, run.Name),
            $"Starts in {run.Name}, each with all the others running",
            [.. run.Starts.Moments.Reverse().SelectMany(moment => Of(moment, edition)), .. Worst(worst, run.Starts)]);

    private static IEnumerable<DerivationStep> Of(StartMoment moment, CodeEdition edition)
    {
        var start = moment.Starting[0];
        var space = start.Circuit.Space;
        yield return new($"{start.Called}: full load", start.FullLoad.Value, "A", start.Load.Size.CiteIn(edition), [space]);
        yield return new($"{start.Called}: {start.Words}", start.Power.Value, "VA", start.Basis.Cite, [space]);
        yield return new($"{start.Called}: current as it starts", start.Current.Value, "A", Citation.Arithmetic, [space]);
    }

    private static IEnumerable<DerivationStep> Worst(StartMoment worst, StartTable table)
    {
        var start = worst.Starting[0];
        foreach (var leg in worst.Asked.System.Legs)
        {
            var others = (table.Running - start.Running).VoltAmperesOn(leg);
            yield return new($"Leg {leg}: the others running", others.Value, "VA", Citation.Arithmetic);
            yield return new($"Leg {leg}: {start.Called} starting", start.Legs.VoltAmperesOn(leg).Value, "VA", Citation.Arithmetic);
            yield return new($"Leg {leg}: together", worst.AskedOn(leg).Value, "VA", Citation.Arithmetic);
            if (worst.MayOn is { } may)
                yield return new($"Leg {leg}: {MayWords(worst)}", may.Value, "VA", Citation.Schedule);
        }
        if (worst.MayInAll is { } all)
            yield return new($"All legs: {MayWords(worst)}", all.Value, "VA", Citation.Schedule);
    }

    private static string MayWords(StartMoment moment) => moment.Surge.Worth switch
    {
        SurgeWorth.Counted => "surge of the source",
        SurgeWorth.NotStated or SurgeWorth.WithoutTime or SurgeWorth.TooShort =>
            "continuous power; no surge that counts is stated",
        var worth => throw Unnamed.Of(worth),
    };
}
