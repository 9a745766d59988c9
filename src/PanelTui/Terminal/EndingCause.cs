namespace PanelTui.Terminal;

/// <summary>What ended the full screen.</summary>
public enum EndingCause
{
    /// <summary>The main window was closed.</summary>
    Quit,

    /// <summary>The line to the terminal is gone: its far end was closed, or the system said so.</summary>
    Hangup,

    /// <summary>Another process asked the program to stop.</summary>
    Signal,

    /// <summary>A fault in the program itself.</summary>
    Crash,
}
