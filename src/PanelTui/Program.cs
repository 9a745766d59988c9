using PanelTui.CommandLine;
using PanelTui.Terminal;

namespace PanelTui;

/// <summary>The program `paneltui`.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        StandardFile.Secure();
        if (OperatingSystem.IsLinux()) Libc.ShareOneHeap();
        return LastResort.Run(() => CommandLineRoot.Run(args, Streams.OfThisProcess, EditVerb.Run));
    }
}
