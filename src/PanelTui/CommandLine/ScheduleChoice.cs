using System.Globalization;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>Which schedule is meant where none is named: the only one of this folder, or one the person chooses.</summary>
internal static class ScheduleChoice
{
    private const string Pattern = "*.panel.yaml";
    private const string HowTo = "which schedule? Name one: paneltui FILE; or write one: paneltui new FILE";

    /// <summary>Null where there is none, or no person who could choose; what to do has then been said.</summary>
    public static string? Here(Streams streams) => In(".", streams);

    internal static string? In(string folder, Streams streams)
    {
        string[] files = [.. Directory.GetFiles(folder, Pattern).Order(StringComparer.Ordinal)];
        if (streams.Person is null) streams.Misuse(null, HowTo);
        else if (files.Length == 0) streams.Misuse(null, $"there is no {Pattern} in this folder; {HowTo}");
        else return files.Length == 1 ? Plain(files[0]) : Chosen(files, streams);
        return null;
    }

    private static string? Chosen(string[] files, Streams streams)
    {
        for (var at = 0; at < files.Length; at++)
            streams.Out.WriteLine(DisplayText.Clean($"{(at + 1).ToString(CultureInfo.InvariantCulture),4}  {Plain(files[at])}"));
        var person = streams.Person!();
        while (true)
        {
            streams.Out.Write("Open which? A number, or Enter for none: ");
            if (person.ReadLine()?.Trim() is not { Length: > 0 } answer) return null;
            if (int.TryParse(answer, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= files.Length)
                return Plain(files[number - 1]);
            streams.Out.WriteLine($"There is no number {DisplayText.Clean(answer)} in the list.");
        }
    }

    private static string Plain(string file) => file.StartsWith("./", StringComparison.Ordinal) ? file[2..] : file;
}
