using System.Collections.Concurrent;
using Terminal.Gui.Drivers;
using Terminal.Gui.Time;

namespace PanelTui.Terminal;

/// <summary>The parts the library builds its application from: our reader, our output, our measure of the window.</summary>
internal sealed class TerminalParts(IInput<char> input, DiffOutput output, TtySize size) : ComponentFactoryImpl<char>
{
    public override string GetDriverName() => DriverRegistry.Names.ANSI;

    public override IInput<char> CreateInput() => input;

    public override IInputProcessor CreateInputProcessor(ConcurrentQueue<char> inputBuffer, ITimeProvider? timeProvider = null) =>
        new AnsiInputProcessor(inputBuffer, timeProvider);

    public override ISizeMonitor CreateSizeMonitor(IOutput consoleOutput, IOutputBuffer outputBuffer) => size;

    public override IOutput CreateOutput() => output;
}
