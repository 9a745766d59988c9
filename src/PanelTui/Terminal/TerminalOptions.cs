namespace PanelTui.Terminal;

/// <summary>What the user decided about the terminal on the command line; the rest is told by the environment.</summary>
/// <param name="Ascii">Draw with plain ASCII even where the locale knows more.</param>
/// <param name="NoColour">No colour even where the terminal has it.</param>
/// <param name="Mouse">Ask the terminal for clicks, drags and the wheel; Shift then selects text.</param>
public sealed record TerminalOptions(bool Ascii = false, bool NoColour = false, bool Mouse = true);
