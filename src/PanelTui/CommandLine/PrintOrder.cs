namespace PanelTui.CommandLine;

/// <summary>What `print` was asked for, as it was typed.</summary>
internal sealed record PrintOrder(string What, string File, string? Format, string? Output, string Paper, int Tape, bool Force);
