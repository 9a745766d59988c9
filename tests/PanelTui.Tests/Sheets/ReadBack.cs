using System.Collections.Concurrent;
using System.Collections.Immutable;
using PanelTui.Engine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Logging;

namespace PanelTui.Tests.Sheets;

/// <summary>A sheet of an example as another program reads it from the PDF. Lengths in points.</summary>
/// <param name="Pages">The texts of each page, one for each time something was written on it.</param>
/// <param name="Smallest">The size of the smallest letter.</param>
/// <param name="Fonts">The names of the fonts of all letters.</param>
/// <param name="Created">When the file says that it was made.</param>
/// <param name="Outside">Letters and strokes that do not lie on their page, by what they are and where.</param>
/// <param name="Complaints">What the reader says against the file.</param>
internal sealed record ReadBack(
    ImmutableArray<ImmutableArray<string>> Pages, double Smallest, ImmutableHashSet<string> Fonts, string? Created,
    ImmutableArray<string> Outside, ImmutableArray<string> Complaints)
{
    private const double Hairline = 0.01;

    private static readonly ConcurrentDictionary<(string, string), Lazy<ReadBack>> Known = new();

    /// <summary>
    /// All that is written, in the order in which it was; what was broken over lines is joined again.
    /// </summary>
    public string Text => Joined(Pages.SelectMany(page => page));

    /// <summary>Each sheet is written and read once for all tests.</summary>
    public static ReadBack Of(string example, string kind) => Known.GetOrAdd(
        (example, kind), key =>
            new Lazy<ReadBack>(() => Of(Written(SheetCases.Example(key.Item1), key.Item2, SheetFormat.Pdf)!))).Value;

    public static byte[]? Written(Assessment assessment, string kind, SheetFormat format) =>
        format.Write(SheetKind.Find(kind)!.Make(assessment, SheetChoices.Default), SheetChoices.Default);

    public static string Joined(IEnumerable<string> texts) =>
        string.Join(' ', texts.SelectMany(text => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

    public static ReadBack Of(byte[] pdf)
    {
        var heard = new Heard();
        using var document = PdfDocument.Open(pdf, new ParsingOptions { UseLenientParsing = false, Logger = heard });
        var pages = document.GetPages().ToList();
        var letters = pages.SelectMany(page => page.Letters).ToList();
        return new ReadBack(
            [.. pages.Select(page => page.Letters.GroupBy(letter => letter.TextSequence)
                .Select(text => string.Concat(text.Select(letter => letter.Value))).ToImmutableArray())],
            letters.Min(letter => letter.PointSize),
            [.. letters.Select(letter => letter.FontName ?? "")],
            document.Information.CreationDate,
            [.. pages.SelectMany(OffThePage)],
            [.. heard.Said]);
    }

    private static IEnumerable<string> OffThePage(Page page) =>
        page.Letters.Select(letter => (What: letter.Value, Box: letter.BoundingBox))
            .Concat(page.Paths.Select(path => (What: "stroke", Box: path.GetBoundingRectangle() ?? default)))
            .Where(mark => mark.Box.Left < -Hairline || mark.Box.Bottom < -Hairline
                || mark.Box.Right > page.Width + Hairline || mark.Box.Top > page.Height + Hairline)
            .Select(mark => $"page {page.Number}: {mark.What} at {mark.Box}");

    private sealed class Heard : ILog
    {
        public List<string> Said { get; } = [];

        public void Debug(string message) { }

        public void Debug(string message, Exception ex) { }

        public void Warn(string message) => Said.Add(message);

        public void Error(string message) => Said.Add(message);

        public void Error(string message, Exception ex) => Said.Add($"{message}: {ex.Message}");
    }
}
