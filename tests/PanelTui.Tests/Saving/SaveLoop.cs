using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Tests.Saving;

/// <summary>A program that does nothing but save, to be killed, or to be run on a disk that fails.</summary>
internal static class SaveLoop
{
    public const string Argument = "--save";

    private const int Lines = 4000;

    /// <summary>Version after version of the file, a line on the screen after each; without an end where none is given.</summary>
    public static int Run(string file, int times)
    {
        var state = ScheduleFile.Look(file);
        for (var version = 1; version <= times; version++)
        {
            try
            {
                state = ScheduleFile.Save(file, SourceText.FromString(Version(version)), state).State;
                Console.WriteLine(version);
            }
            catch (SaveRefused refused)
            {
                Console.WriteLine(refused.Message);
                return 1;
            }
        }

        return 0;
    }

    public static string Version(int version) => string.Concat(Enumerable.Repeat($"# version {version:D9}\n", Lines)) + "# end\n";

    /// <summary>Whether a file holds one version, from its first to its last byte.</summary>
    public static bool IsWhole(string text)
    {
        var first = text.Split('\n')[0];
        return text == string.Concat(Enumerable.Repeat(first + "\n", Lines)) + "# end\n";
    }
}
