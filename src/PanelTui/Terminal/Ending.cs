using PanelTui.Engine;
namespace PanelTui.Terminal;

/// <summary>How the full screen came to its end; handed over once, before the terminal is touched.</summary>
/// <remarks>
/// For anything but <see cref="EndingCause.Quit"/> the line may already be gone and the call may come on any thread:
/// keep the user's work, touch no view, be quick.
/// </remarks>
public sealed class Ending(EndingCause cause, int signal = 0, Exception? fault = null)
{
    public EndingCause Cause { get; } = cause;

    /// <summary>The fault in the program itself, for <see cref="EndingCause.Crash"/>.</summary>
    public Exception? Fault { get; } = fault;

    /// <summary>0, 70 for a fault in the program (2 when memory ran out), or 128 and the number of the signal.</summary>
    public int ExitCode { get; } = cause switch
    {
        EndingCause.Quit => 0,
        EndingCause.Crash => fault is null ? 70 : LastResort.CodeOf(fault),
        EndingCause.Hangup or EndingCause.Signal => 128 + signal,
        _ => throw Unnamed.Of(cause),
    };

    /// <summary>A sentence for the user, printed once the terminal is given back: where the work was kept.</summary>
    public string? Note { get; set; }
}
