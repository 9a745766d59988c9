using PanelTui.Documents.Reading.Values;
using PanelTui.Engine;
using PanelTui.Engine.Quantities;
using PanelTui.Presentation;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using PanelTui.Sheets.Layout;

namespace PanelTui.CommandLine;

/// <summary>One run of `print`: understands the order, makes the sheets, writes them.</summary>
internal sealed class PrintRun(Streams streams)
{
    private const string Everything = "all";

    public int Of(PrintOrder order)
    {
        if (Misunderstood(order) is { } problem) return streams.Refuse(problem);
        if (AssessedFile.Read(order.File, streams) is not { } assessment) return ExitCode.Unusable;
        var choices = new SheetChoices(Paper.All.First(paper => paper.Name == order.Paper), order.Tape);
        var code = order.What == Everything ? All(order, assessment, choices) : One(order, assessment, choices);
        if (code != ExitCode.Clean || OpenErrors.Of(assessment) is not { } open) return code;
        streams.Error.WriteLine(DisplayText.Clean($"{order.File}: {open}"));
        return ExitCode.Findings;
    }

    /// <summary>What can be said before the file is read.</summary>
    private static string? Misunderstood(PrintOrder order) => order switch
    {
        _ when order.What != Everything && SheetKind.Find(order.What) is null =>
            Unknown("sheet", order.What, [.. SheetKind.All.Select(kind => kind.Name), Everything]),
        { Format: { } format } when SheetFormat.Find(format) is null => Unknown("format", format, [.. SheetFormat.All.Select(known => known.Name)]),
        _ when Paper.All.All(paper => paper.Name != order.Paper) => Unknown("paper", order.Paper, [.. Paper.All.Select(paper => paper.Name)]),
        _ when !LabelSheet.Tapes.Contains(order.Tape) =>
            $"paneltui: there is no tape of {Shown.Exactly(order.Tape)} mm here. There is {string.Join(", ", LabelSheet.Tapes.Select(tape => Shown.Exactly(tape)))}.",
        { What: Everything, Output: null } => "paneltui: print all writes into a folder: name it with -o.",
        { What: not Everything, Format: null, Output: { } path } when SheetFormat.ByEnding(path) is null =>
            $"paneltui: the ending of {path} tells no format. Name one with --format, or end it in {string.Join(", ", SheetFormat.All.Select(format => format.Endings[0]))}.",
        { Output: { } path, File: not "-" } when Path.GetFullPath(path) == Path.GetFullPath(order.File) =>
            $"paneltui: {path} is the schedule itself; it is never overwritten by a sheet.",
        _ => null,
    };

    private static string Unknown(string what, string word, string[] known) =>
        $"paneltui: there is no {what} {word}{DidYouMean.Ending(word, known)} There is {string.Join(", ", known)}.";

    private int One(PrintOrder order, Assessment assessment, SheetChoices choices)
    {
        var kind = SheetKind.Find(order.What)!;
        var format = order switch
        {
            { Format: { } name } => SheetFormat.Find(name)!,
            { Output: { } path } => SheetFormat.ByEnding(path)!,
            _ => SheetFormat.Text,
        };
        if (format.Write(kind.Make(assessment, choices), choices) is not { } bytes)
            return streams.Refuse($"paneltui: there is no {format.Name} of {kind.Name}: csv is for lists, svg for pictures.");
        return order.Output is { } output ? ToFile(output, bytes, order.Force) : ToStandardOutput(bytes, format);
    }

    private int ToStandardOutput(byte[] bytes, SheetFormat format)
    {
        if (!format.IsBinary)
        {
            streams.Out.Write(System.Text.Encoding.UTF8.GetString(bytes));
            return ExitCode.Clean;
        }

        if (streams.Raw is not { } raw) return streams.Refuse($"paneltui: {format.Name} is not for a terminal: name a file with -o.");
        using var stream = raw();
        stream.Write(bytes);
        return ExitCode.Clean;
    }

    private int ToFile(string path, byte[] bytes, bool force)
    {
        if (streams.WritesNothing) return !force && Path.Exists(path) ? streams.Refuse($"{path} exists already; --force overwrites it.") : streams.WouldWrite(path);
        if (OutputFile.Write(path, bytes, force) is { } problem)
            return streams.Refuse(problem.Exists ? $"{problem.Sentence.TrimEnd('.')}; --force overwrites it." : problem.Sentence);
        streams.Out.WriteLine(DisplayText.Clean($"Wrote {path}."));
        return ExitCode.Clean;
    }

    /// <summary>Nothing is written where one of the files exists already; their names are the program's own.</summary>
    private int All(PrintOrder order, Assessment assessment, SheetChoices choices)
    {
        var files = SheetKind.All.SelectMany(kind => Files(kind, order, assessment, choices)).ToList();
        if (!order.Force && files.Find(file => Path.Exists(file.Path)) is { Path: { } existing })
            return streams.Refuse($"{existing} exists already; nothing was written. --force overwrites.");
        try
        {
            if (!streams.WritesNothing) Directory.CreateDirectory(order.Output!);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return streams.Refuse($"{order.Output} is no folder to write in: {problem.Message}");
        }

        return files.Max(file => ToFile(file.Path, file.Bytes, order.Force));
    }

    /// <summary>PDF of each, the picture of those that are one, the list of those that are one; or the one format that is named.</summary>
    private static IEnumerable<(string Path, byte[] Bytes)> Files(SheetKind kind, PrintOrder order, Assessment assessment, SheetChoices choices)
    {
        var sheet = kind.Make(assessment, choices);
        SheetFormat[] formats = order.Format is { } name ? [SheetFormat.Find(name)!] : [SheetFormat.Pdf, SheetFormat.Svg, SheetFormat.Csv];
        foreach (var format in formats)
        {
            if (format.Write(sheet, choices) is { } bytes)
                yield return (Path.Combine(order.Output!, kind.Name + format.Endings[0]), bytes);
        }
    }
}
