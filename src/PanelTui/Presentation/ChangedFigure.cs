using PanelTui.Engine;

namespace PanelTui.Presentation;

/// <summary>A figure in two versions, as it is shown; nothing where that version does not have it.</summary>
internal readonly record struct ChangedFigure(string Name, string? Before, string? After)
{
    /// <summary>Those that differ in what is shown.</summary>
    public static IEnumerable<ChangedFigure> Of(Assessment? before, Assessment? after)
    {
        var (old, now) = (Figures(before), Figures(after));
        return old.Keys.Union(now.Keys)
            .Select(name => new ChangedFigure(name, old.GetValueOrDefault(name), now.GetValueOrDefault(name)))
            .Where(figure => figure.Before != figure.After);
    }

    private static Dictionary<string, string> Figures(Assessment? assessment)
    {
        var figures = new Dictionary<string, string>();
        if (assessment is null) return figures;
        foreach (var leg in assessment.Schedule.Panel.System.Legs)
            figures[$"connected on leg {leg}"] = $"{Figure.Of(assessment.Connected.VoltAmperesOn(leg))}, {Figure.Of(assessment.Connected.AmperesOn(leg))}";
        figures["connected in all"] = Figure.Of(assessment.Connected.Total);
        figures["neutral"] = Figure.Of(assessment.Connected.Neutral);
        figures["imbalance"] = Figure.Of(assessment.Connected.Imbalance);
        if (assessment.Demand is not { } demand) return figures;
        foreach (var leg in assessment.Schedule.Panel.System.Legs)
            figures[$"demand on leg {leg}"] = $"{Figure.Of(demand.Legs.VoltAmperesOn(leg))}, {Figure.Of(demand.Legs.AmperesOn(leg))}";
        figures["demand in all"] = Figure.Of(demand.Total);
        figures["least ampacity"] = Figure.Of(demand.MinimumAmpacity);
        return figures;
    }
}
