using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Quantities;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.CommandLine;

/// <summary>What `print` was asked for, as it was typed; null for what was not given.</summary>
internal sealed record PrintOrder(
    string What, string File, string? Format, string? Output, string? Paper, int? Tape, bool Force, bool IsQuiet, bool AsJson, bool IsDryRun)
{
    public const string Everything = "all";

    /// <summary>As a file to write: standard output.</summary>
    public const string StandardOutput = "-";

    private const string Labels = "labels";

    public bool IsEverything => What == Everything;

    /// <summary>The file or folder to write; null for standard output.</summary>
    public string? Target => Output == StandardOutput ? null : Output;

    public SheetChoices Choices => new(
        Sheets.Layout.Paper.All.First(paper => paper.Name == (Paper ?? Sheets.Layout.Paper.Letter.Name)), Tape ?? SheetChoices.Default.Tape);

    /// <summary>The formats that are asked for; of `all` without one those that each sheet is usually kept in.</summary>
    public IReadOnlyList<SheetFormat> Formats => this switch
    {
        { Format: { } name } => [SheetFormat.Find(name)!],
        { IsEverything: true } => [SheetFormat.Pdf, SheetFormat.Svg, SheetFormat.Csv],
        { Target: { } path } => [SheetFormat.ByEnding(path)!],
        _ => [SheetFormat.Text],
    };

    /// <summary>What can be said before the file is read; null for an order that can be tried.</summary>
    public string? WhyNot => UnknownWord ?? WhyNotThere ?? WhyIgnored;

    private string? UnknownWord => this switch
    {
        { IsEverything: false } when SheetKind.Find(What) is null => Unknown("sheet", What, [.. SheetKind.All.Select(kind => kind.Name), Everything]),
        { Format: { } format } when SheetFormat.Find(format) is null => Unknown("format", format, [.. SheetFormat.All.Select(known => known.Name)]),
        { Paper: { } named } when Sheets.Layout.Paper.All.All(paper => paper.Name != named) =>
            Unknown("paper", named, [.. Sheets.Layout.Paper.All.Select(paper => paper.Name)]),
        { Tape: { } width } when !LabelSheet.Tapes.Contains(width) =>
            $"there is no tape of {Shown.Exactly(width)} mm here. There is {string.Join(", ", LabelSheet.Tapes.Select(tape => Shown.Exactly(tape)))}.",
        _ => null,
    };

    private string? WhyNotThere => this switch
    {
        { IsEverything: true, Target: null } => "'print all' writes into a folder: name it with '-o'",
        { IsEverything: false, Format: null, Target: { } path } when SheetFormat.ByEnding(path) is null =>
            $"the ending of '{path}' tells no format. Name one with '--format', or end it in {string.Join(", ", SheetFormat.All.Select(format => format.Endings[0]))}.",
        { Target: { } path, File: not "-" } when Path.GetFullPath(path) == Path.GetFullPath(File) =>
            $"'{path}' is the schedule itself; it is never overwritten by a sheet",
        _ => null,
    };

    /// <summary>An option that would change nothing is refused rather than ignored.</summary>
    private string? WhyIgnored => this switch
    {
        { Tape: not null, What: not (Everything or Labels) } => $"'--tape' is for labels, and '{What}' has none",
        { Paper: not null } when !Formats.Contains(SheetFormat.Pdf) => "'--paper' is for pdf",
        { Target: null, Force: true } => "'--force' overwrites a file: name it with '-o'",
        { Target: null, IsQuiet: true } => "'--quiet' leaves out what is said of a written file: name it with '-o'",
        { Target: null, AsJson: true } => "'--json' tells what was written: name a file with '-o'",
        { Target: null, IsDryRun: true } => "'--dry-run' tells what would be written: name a file with '-o'",
        { IsQuiet: true, AsJson: true } => "'--quiet' prints nothing and '--json' an object: give one of them",
        { IsQuiet: true, IsDryRun: true } => "'--dry-run' tells what would be written, so '--quiet' does not go with it",
        _ => null,
    };

    private static string Unknown(string what, string word, string[] known) =>
        $"there is no {what} '{word}'{DidYouMean.Ending(word, known)} There is {string.Join(", ", known)}.";
}
