using PanelTui.CommandLine;

namespace PanelTui;

/// <summary>The program `paneltui`.</summary>
internal static class Program
{
    private static int Main(string[] args) => CommandLineRoot.Run(args, Streams.OfThisProcess, EditVerb.Run);
}
