using PanelTui.Engine;
using PanelTui.Presentation;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.CommandLine;

/// <summary>One sheet in one format, and where it goes.</summary>
internal sealed record PrintedFile(SheetKind Kind, SheetFormat Format, string Path, byte[] Bytes);

/// <summary>One run of `print`: makes the sheets and writes them.</summary>
internal sealed class PrintRun(PrintOrder order, Streams streams)
{
    public int Of()
    {
        if (AssessedFile.Read(order.File, streams) is not { } assessment) return ExitCode.Unusable;
        var open = OpenErrors.Of(assessment);
        var code = order.Target is null ? ToStandardOutput(assessment) : ToFiles(assessment, open);
        if (code != ExitCode.Clean || open is null) return code;
        streams.Error.WriteLine(DisplayText.Clean($"{order.File}: {open}"));
        return ExitCode.Findings;
    }

    private int ToStandardOutput(Assessment assessment)
    {
        var (kind, format) = (SheetKind.Find(order.What)!, order.Formats[0]);
        if (format.Write(kind.Make(assessment, order.Choices), order.Choices) is not { } bytes) return NoSuch(format, kind);
        if (!format.IsBinary)
        {
            streams.Out.Write(System.Text.Encoding.UTF8.GetString(bytes));
            return ExitCode.Clean;
        }

        if (streams.Raw is not { } raw) return streams.Refuse($"{format.Name} is not for a terminal: name a file with '-o'");
        using var stream = raw();
        stream.Write(bytes);
        return ExitCode.Clean;
    }

    private int ToFiles(Assessment assessment, string? open)
    {
        var files = order.IsEverything ? SheetKind.All.SelectMany(kind => FilesOf(kind, assessment)).ToList() : FileOf(assessment);
        if (files.Count == 0) return NoSuch(order.Formats[0], order.IsEverything ? null : SheetKind.Find(order.What)!);
        if (WhyNotWritten(files) is { } reason) return streams.Refuse(reason);
        foreach (var file in files)
        {
            if (!order.IsDryRun && OutputFile.Write(file.Path, file.Bytes, order.Force) is { } problem)
                return streams.Refuse(problem.Exists ? $"{problem.Sentence.TrimEnd('.')}; '--force' overwrites it" : problem.Sentence);
            if (order is { IsQuiet: false, AsJson: false }) Tell(file.Path);
        }

        if (order.AsJson) streams.Out.WriteLine(PrintJson.Of(files, !order.IsDryRun, open));
        return ExitCode.Clean;
    }

    private void Tell(string path)
    {
        if (order.IsDryRun) streams.WouldWrite(path);
        else streams.Out.WriteLine(DisplayText.Clean($"Wrote {path}."));
    }

    /// <summary>Nothing is written where one of the files exists already; the names in a folder are the program's own.</summary>
    private string? WhyNotWritten(List<PrintedFile> files)
    {
        if (!order.Force && files.Find(file => Path.Exists(file.Path)) is { Path: { } existing })
            return $"'{existing}' exists already; nothing was written. '--force' overwrites it.";
        if (!order.IsEverything || order.IsDryRun) return null;
        try
        {
            Directory.CreateDirectory(order.Target!);
            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return $"'{order.Target}' is no folder to write in: {problem.Message}";
        }
    }

    private List<PrintedFile> FileOf(Assessment assessment)
    {
        var (kind, format) = (SheetKind.Find(order.What)!, order.Formats[0]);
        return format.Write(kind.Make(assessment, order.Choices), order.Choices) is { } bytes ? [new(kind, format, order.Target!, bytes)] : [];
    }

    private IEnumerable<PrintedFile> FilesOf(SheetKind kind, Assessment assessment)
    {
        var sheet = kind.Make(assessment, order.Choices);
        foreach (var format in order.Formats)
        {
            if (format.Write(sheet, order.Choices) is { } bytes)
                yield return new(kind, format, Path.Combine(order.Target!, kind.Name + format.Endings[0]), bytes);
        }
    }

    private int NoSuch(SheetFormat format, SheetKind? kind) =>
        streams.Refuse($"there is no {format.Name} of {kind?.Name ?? "any sheet"}: csv is for lists, svg for pictures");
}
