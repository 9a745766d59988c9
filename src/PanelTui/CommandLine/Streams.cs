using PanelTui.Presentation;
using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>Where a verb reads and writes: data on <paramref name="Out"/>, messages on <paramref name="Error"/>.</summary>
internal sealed record Streams(Func<Stream> In, TextWriter Out, TextWriter Error)
{
    public static Streams OfThisProcess { get; } = new(StandardFile.Input.Open, StandardFile.Output.Writer(), StandardFile.Error.Writer())
    {
        Person = StandardFile.Input.IsTerminal && StandardFile.Output.IsTerminal ? StandardFile.Input.Reader : null,
        Raw = StandardFile.Output.IsTerminal ? null : StandardFile.Output.Open,
        Screen = OutputScreen.OfThisProcess(),
    };

    /// <summary>Where a person answers questions; nothing where no person sits at both ends.</summary>
    public Func<TextReader>? Person { get; init; }

    /// <summary>The command says what it would write, and writes no file.</summary>
    public bool WritesNothing { get; init; }

    /// <summary>Says that a file would have been written.</summary>
    public int WouldWrite(string path)
    {
        Out.WriteLine(DisplayText.Clean($"Would write {path}; nothing has been written."));
        return ExitCode.Clean;
    }

    /// <summary>Standard output for bytes that are no text; nothing where it is a terminal.</summary>
    public Func<Stream>? Raw { get; init; }

    /// <summary>The terminal that <see cref="Out"/> is; null where it is none.</summary>
    public OutputScreen? Screen { get; init; }

    /// <summary>Says why a verb cannot do its work, and gives the exit code that goes with it.</summary>
    public int Refuse(string why)
    {
        Error.WriteLine(DisplayText.Clean($"paneltui: {why}"));
        return ExitCode.Unusable;
    }

    /// <summary>Says what is wrong with the command line of a verb, and where its help is.</summary>
    public int Misuse(string? verb, string why)
    {
        Refuse(why);
        Error.WriteLine(verb is null ? "Try 'paneltui --help'." : $"Try 'paneltui {verb} --help'.");
        return ExitCode.Unusable;
    }

    /// <summary>Prints prose: folded at the width of a terminal, whole where the output goes elsewhere.</summary>
    public void Say(string line)
    {
        foreach (var row in ReportLine.Folded(line, Screen)) Out.WriteLine(row);
    }
}
