using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>The live figures beside the panel; with a second assessment, what a change would do to each of them.</summary>
internal sealed class FigureRows(Assessment now, Assessment? then)
{
    public static ImmutableArray<FigureRow> Of(Assessment now, Assessment? then = null)
    {
        var rows = new FigureRows(now, then);
        return [.. rows.Connected(), FigureRow.Gap, .. rows.Demand(), FigureRow.Gap, .. rows.Source()];
    }

    private static Func<FigureRow, FigureRow> As(string figure) => row => row with { Figure = figure };

    private IEnumerable<FigureRow> Connected()
    {
        yield return new("Connected", Both(it => Figure.Of(it.Connected.Total)), Tone.Strong) { Figure = FigureNames.Connected };
        foreach (var leg in now.Schedule.Panel.System.Legs)
            yield return new($"Leg {leg}", LegFigure(leg), FaceText.ToneOf(leg)) { Figure = FigureNames.Legs };
        yield return new("Imbalance", Both(it => Figure.Of(it.Connected.Imbalance))) { Figure = FigureNames.Imbalance };
        yield return new("Neutral", Both(it => Figure.Of(it.Connected.Neutral))) { Figure = FigureNames.Neutral };
    }

    private IEnumerable<FigureRow> Demand()
    {
        if (now.Demand is not { } demand)
        {
            yield return new($"Demand: {now.Schedule.Demand.Method.Word}", "", Tone.Strong);
            yield return new("needs measured_peak", "", Tone.Faint);
            yield break;
        }

        yield return new("Demand", Both(it => Figure.Of(it.Demand!.Total)), Tone.Strong) { Figure = FigureNames.Demand };
        foreach (var leg in now.Schedule.Panel.System.Legs)
            yield return new($"Leg {leg}", Both(it => Figure.Of(it.Demand!.Legs.AmperesOn(leg)))) { Figure = FigureNames.Demand };
        yield return new("Least ampacity", Both(it => Figure.Of(it.Demand!.MinimumAmpacity))) { Figure = FigureNames.MinimumAmpacity };
        yield return As(FigureNames.FeederDevice)(Against("Feeder", now.Schedule.Feeder?.Ocpd, it => it.Feeder?.StandardOcpd));
        yield return As(FigureNames.TransferRating)(Against("Transfer", now.Transfer?.Stated, it => it.Transfer?.Standard));
    }

    private IEnumerable<FigureRow> Source()
    {
        if (Tightest(now) is not { } run) yield break;
        var figure = FigureNames.OfScenario(FigureNames.Running, run.Name);
        yield return new($"Source: {run.Name}", "", Tone.Strong) { Figure = figure };
        foreach (var leg in now.Schedule.Panel.System.Legs)
        {
            var over = run.Legs[leg].Ok == false;
            yield return new($"{leg}{(over ? " over!" : "")}", SourceFigure(run, leg), over ? Tone.Warning : Tone.Plain) { Figure = figure };
        }
    }

    /// <summary>The scenario that leaves the source the least on a leg.</summary>
    private static ScenarioRun? Tightest(Assessment of) => of.Scenarios.MaxBy(run => run.Legs.Values.Max(leg => leg.Running.Value));

    private string SourceFigure(ScenarioRun run, Leg leg)
    {
        var preview = then?.Scenarios.FirstOrDefault(other => other.Scenario.Name == run.Name);
        var watts = Figure.Change(
            Shown.Rounded(run.Legs[leg].Running.Value, 0),
            preview is null ? null : Shown.Rounded(preview.Legs[leg].Running.Value, 0));
        return run.Legs[leg].Limit is { } limit ? $"{watts} of {Figure.Of(limit)}" : $"{watts} W";
    }

    private FigureRow Against(string label, Amperes? stated, Func<Assessment, Amperes?> needed)
    {
        var needs = Both(it => needed(it) is { } rating ? $"{rating}" : "none made");
        var last = needed(then ?? now);
        var has = stated ?? default;
        var falls = stated is not null && (last is not { } least || has < least);
        return stated is null
            ? new(label, $"needs {needs}")
            : new($"{label} {stated}", $"{(falls ? "! " : "")}needs {needs}", falls ? Tone.Error : Tone.Plain) { Short = $"{label} {Shown.Rounded(has.Value, 0)}" };
    }

    private string LegFigure(Leg leg)
    {
        var (amperes, would) = (Figure.Of(now.Connected.AmperesOn(leg)), then is null ? null : Figure.Of(then.Connected.AmperesOn(leg)));
        return would is null || would == amperes ? $"{Figure.Of(now.Connected.VoltAmperesOn(leg))} {amperes,7}" : Figure.Change(amperes, would);
    }

    private string Both(Func<Assessment, string> figure) => Figure.Change(figure(now), then is null ? null : figure(then));
}
