using System.Text;

namespace PanelTui.Terminal;

/// <summary>Standard input, output and error as the system has them: whether each is open, and what is behind it.</summary>
/// <remarks>
/// The framework's console sends a terminal the sequences of its keypad at the first read or write, and leaves them on.
/// Here a plain command sends nothing but its text. Windows has no such calls: there the console stays.
/// </remarks>
internal sealed class StandardFile
{
    public static StandardFile Input { get; } = new(0);

    public static StandardFile Output { get; } = new(1);

    public static StandardFile Error { get; } = new(2);

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly int _fd;

    private StandardFile(int fd)
    {
        _fd = fd;
        if (OperatingSystem.IsWindows()) return;
        var flags = Libc.FlagsOf(fd, Libc.GetFlags);
        IsOpen = flags >= 0 && (flags & Libc.CloseOnExec) == 0;
        if (flags < 0) Libc.Occupy(fd);
        IsTerminal = IsOpen && Libc.IsTerminal(fd) == 1;
    }

    /// <summary>
    /// False when the program was started without it. The number may then stand for a file that the runtime has opened
    /// since, which is told by its flag: a file that a program inherits is never one to close on exec.
    /// </summary>
    public bool IsOpen { get; } = true;

    public bool IsTerminal { get; }

    public Stream Open() => OperatingSystem.IsWindows() ? Console() : new PlainStream(_fd, IsOpen);

    /// <summary>Sends each text at once, as UTF-8.</summary>
    public TextWriter Writer() => new StreamWriter(Open(), Utf8) { AutoFlush = true };

    /// <summary>The terminal itself echoes and corrects what a person types.</summary>
    public TextReader Reader() => new StreamReader(Open(), Utf8);

    /// <summary>
    /// Takes the numbers of those that are closed, so that no file opened later gets one and is written into by mistake;
    /// and a reader that has gone away is an error of the write, not the end of the program.
    /// </summary>
    public static void Secure()
    {
        if (OperatingSystem.IsWindows()) return;
        _ = (Input, Output, Error);
        _ = Libc.OnSignal(Libc.BrokenPipeSignal, Libc.Ignore);
    }

#pragma warning disable RS0030 // The console of Windows changes no mode of a terminal.
    private Stream Console() => _fd switch
    {
        0 => System.Console.OpenStandardInput(),
        1 => System.Console.OpenStandardOutput(),
        _ => System.Console.OpenStandardError(),
    };
#pragma warning restore RS0030
}
