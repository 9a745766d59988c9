using PanelTui.CommandLine;
using PanelTui.Terminal;

namespace PanelTui.Tests.Terminal;

/// <summary>A program that runs many command lines after each other on its own standard streams, with a mark before each.</summary>
internal static class CommandLines
{
    public const string Argument = "--command-lines";

    public static string Mark(int number) => $"== {number}\n";

    /// <param name="file">A command line in each line, its words between tabs.</param>
    public static int Run(string file)
    {
        StandardFile.Secure();
        var streams = Streams.OfThisProcess;
        foreach (var (number, line) in File.ReadAllLines(file).Index())
        {
            streams.Out.Write(Mark(number));
            CommandLineRoot.Run(line.Split('\t', StringSplitOptions.RemoveEmptyEntries), streams, EditVerb.Run);
        }

        return 0;
    }
}
