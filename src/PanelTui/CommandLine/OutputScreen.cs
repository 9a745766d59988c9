using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>The terminal that standard output is.</summary>
/// <param name="Columns">Its width; long lines fold there.</param>
/// <param name="HasColor">False where NO_COLOR is set or the terminal knows no color.</param>
internal sealed record OutputScreen(int Columns, bool HasColor)
{
    /// <summary>The narrowest width that lines fold at: below it a folded line is harder to read than a long one.</summary>
    public const int LeastColumns = 20;

    /// <summary>Null where standard output is no terminal, and on Windows, where nothing tells.</summary>
    public static OutputScreen? OfThisProcess() => StandardFile.Output.IsTerminal
        ? new(TtySize.Measure().Width, Surroundings.Colours(Environment.GetEnvironmentVariable) != ColourDepth.None)
        : null;
}
