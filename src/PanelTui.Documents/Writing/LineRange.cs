namespace PanelTui.Documents.Writing;

/// <summary>Whole lines, from the first to the last, counted from 1.</summary>
internal readonly record struct LineRange(int First, int Last);
