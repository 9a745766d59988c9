using System.Runtime.CompilerServices;

namespace PanelTui.Terminal;

/// <summary>What the program says when it cannot go on, without a trace: not enough memory, or a fault in itself.</summary>
internal static class LastResort
{
    /// <summary>The exit code for what stopped the program: 2 for want of memory, 70 for a fault in it.</summary>
    public static int CodeOf(Exception fault) => IsShortOfMemory(fault) ? 2 : 70;

    /// <summary>Runs the program; says in one sentence what stopped it.</summary>
    public static int Run(Func<int> program)
    {
        try
        {
            return program();
        }
#pragma warning disable CA1031 // The last catch of the program: the runtime would print a trace and dump its memory.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Say(fault);
            return CodeOf(fault);
        }
    }

    /// <summary>Says it on standard error.</summary>
    public static void Say(Exception fault)
    {
        if (IsShortOfMemory(fault)) SayShortOfMemory();
        else Parting.Say(Parting.IsDebugging ? fault.ToString() : $"paneltui stopped because of a fault in itself: {fault.Message}");
    }

    /// <summary>True also where the want of memory broke the start of something else. A thread that cannot be started is one, too.</summary>
    public static bool IsShortOfMemory(Exception? fault) => fault switch
    {
        null => false,
        OutOfMemoryException or InsufficientExecutionStackException => true,
        _ => IsShortOfMemory(fault.InnerException),
    };

    /// <summary>Bytes that are there already: there may be no memory to make any.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void SayShortOfMemory()
    {
        if (!OperatingSystem.IsWindows() && StandardFile.Error.IsOpen)
            _ = TtyWriter.WriteAll(2, "paneltui: there is not enough memory.\n"u8);
    }
}
