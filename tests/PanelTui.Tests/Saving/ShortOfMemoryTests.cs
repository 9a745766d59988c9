using System.Diagnostics;
using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Saving;

public sealed class ShortOfMemoryTests : TerminalTests
{
    /// <summary>From too little to start at all to enough: bytes of heap, in hexadecimal.</summary>
    [Theory]
    [InlineData("200000")]
    [InlineData("380000")]
    [InlineData("400000")]
    [InlineData("1000000")]
    public void However_little_memory_there_is_the_file_is_whole(string heap)
    {
        var file = Path.Combine(Folder, "shed.yaml");
        File.WriteAllText(file, SaveLoop.Version(0));
        var start = new ProcessStartInfo(Tests, [SaveLoop.Argument, file, "2"]) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["DOTNET_GCHeapHardLimit"] = $"0x{heap}";
        using var program = Process.Start(start)!;
        _ = program.StandardError.ReadToEnd();
        program.WaitForExit();
        var text = File.ReadAllText(file);
        SaveLoop.IsWhole(text).ShouldBeTrue();
        if (program.ExitCode == 0) text.ShouldBe(SaveLoop.Version(2));
    }
}
