using PanelTui.Documents.Reading.Fields;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Documents.Reading;

/// <summary>Reads an entry of `loads`.</summary>
internal static class LoadReader
{
    /// <summary>
    /// Common practice, no source: a motor started across the line draws about six times its full-load current.
    /// </summary>
    private static readonly Start AcrossTheLine = new Start.Times(6);

    /// <param name="load">The entry.</param>
    /// <param name="poles">Of the breaker it hangs on.</param>
    public static Load Read(MappingReader load, int poles)
    {
        var kind = load.Required(LoadFields.Kind, LoadKind.Other);
        return new()
        {
            Kind = kind,
            Rating = Rating(load, kind),
            Count = load.Value(LoadFields.Count) ?? 1,
            Outlets = load.Value(LoadFields.Outlets) ?? 1,
            Volts = load.Value(LoadFields.Volts),
            Across = load.Value(LoadFields.Across) ?? Across.LineToLine,
            Pole = Pole(load, poles),
            PowerFactor = load.Value(LoadFields.PowerFactor) ?? PowerFactor.Unity,
            Continuous = load.Value(LoadFields.Continuous) ?? kind == LoadKind.Ev,
            MinimumCircuitAmpacity = load.Value(LoadFields.Mca),
            MaximumOvercurrentProtection = load.Value(LoadFields.Mocp),
            Start = load.Object(LoadFields.Start) ?? UsualStart(kind),
            SoftStart = load.Value(LoadFields.SoftStart),
            Running = load.Value(LoadFields.Running),
            Duty = load.Value(LoadFields.Duty) ?? Percent.Whole,
            Group = load.Object(LoadFields.Group),
            Supplementary = load.Value(LoadFields.Supplementary) ?? false,
            Nonlinear = load.Value(LoadFields.Nonlinear) ?? false,
            Added = load.Value(LoadFields.Added) ?? false,
        };
    }

    public static bool NeedsRating(LoadKind kind) =>
        kind is not (LoadKind.Receptacle or LoadKind.SmallAppliance or LoadKind.Laundry);

    private static LoadRating? Rating(MappingReader load, LoadKind kind)
    {
        var rating = load.Object(LoadFields.Rating);
        if (NeedsRating(kind) && load.ValueOf(LoadFields.Rating) is null) load.Missing(LoadFields.Rating);
        return rating;
    }

    private static int Pole(MappingReader load, int poles)
    {
        var pole = load.Value(LoadFields.Pole) ?? 1;
        if (pole <= poles) return pole;
        var has = poles == 1 ? "1 pole" : $"{poles} poles";
        load.Wrong(LoadFields.Pole, load.SpanOf(LoadFields.Pole), $"is {pole}; the breaker has {has}");
        return 1;
    }

    private static Start UsualStart(LoadKind kind) =>
        kind is LoadKind.Motor or LoadKind.Cooling or LoadKind.HeatPump ? AcrossTheLine : Start.AtRunningCurrent;
}
