using System.Diagnostics;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using PanelTui.Tests.CommandLine;

namespace PanelTui.Tests.Sheets;

/// <summary>
/// Other programs read what this one writes: poppler, Python's csv, Chromium. PANELTUI_OUTSIDE=1 runs them, and fails
/// where one is missing. Without it <see cref="ReadBackTests"/> and <see cref="WebReadTests"/> read the same sheets.
/// </summary>
public class OutsideTests
{
    private static readonly string Shed = Path.Combine(SourceTree.Root, "examples", "packing-shed.panel.yaml");

    public static TheoryData<string> Kinds => [.. SheetKind.All.Select(kind => kind.Name)];

    [Theory, MemberData(nameof(Kinds))]
    public void Poppler_reads_the_text_of_a_pdf(string kind)
    {
        using var folder = new TempFolder();
        var pdf = Printed(folder, kind, "pdf");
        var text = Run("pdftotext", "-layout", pdf, "-");
        text.ShouldContain("Packing shed standby");
        text.ReplaceLineEndings(" ").ShouldContain("authority having jurisdiction");
    }

    [Fact]
    public void Poppler_finds_every_circuit_on_the_directory()
    {
        using var folder = new TempFolder();
        var text = Run("pdftotext", "-layout", Printed(folder, "directory", "pdf"), "-");
        foreach (var circuit in SheetCases.Example("packing-shed").Schedule.Circuits.AtLeastOne()) text.ShouldContain(circuit.Name);
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Poppler_draws_every_page_without_a_complaint(string kind)
    {
        using var folder = new TempFolder();
        Run("pdftoppm", "-r", "20", "-png", Printed(folder, kind, "pdf"), folder.File("page")).ShouldBe("");
    }

    [Theory, InlineData("directory"), InlineData("labels"), InlineData("signs"), InlineData("loads"), InlineData("parts"), InlineData("plots")]
    public void Python_reads_rows_of_one_length_from_a_csv(string kind)
    {
        using var folder = new TempFolder();
        var rows = Run("python3", "-c", "import csv,sys; print({len(r) for r in csv.reader(open(sys.argv[1], newline='', encoding='utf-8'))})", Printed(folder, kind, "csv"));
        rows.Trim().ShouldMatch("^\\{\\d+\\}$");
    }

    [Theory, InlineData("diagram", "svg"), InlineData("plots", "svg"), InlineData("labels", "svg"), InlineData("loads", "html"), InlineData("directory", "html")]
    public void Chromium_draws_pages_and_pictures(string kind, string format)
    {
        using var folder = new TempFolder();
        var picture = folder.File("shot.png");
        Run("chromium", "--headless", "--no-sandbox", "--disable-gpu", $"--screenshot={picture}", Printed(folder, kind, format));
        new FileInfo(picture).Length.ShouldBeGreaterThan(1000);
    }

    private static string Printed(TempFolder folder, string kind, string format)
    {
        var path = folder.File(kind + SheetFormat.Find(format)!.Endings[0]);
        Ran.Of("print", kind, Shed, "-o", path).Code.ShouldBe(0);
        return path;
    }

    /// <summary>What it printed on its two streams; the run is given a minute.</summary>
    private static string Run(string program, params string[] args)
    {
        Assert.SkipUnless(Environment.GetEnvironmentVariable("PANELTUI_OUTSIDE") == "1", "PANELTUI_OUTSIDE=1 has other programs read the sheets");
        using var process = Process.Start(new ProcessStartInfo(program, args) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var error = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit(TimeSpan.FromMinutes(1)).ShouldBeTrue();
        process.ExitCode.ShouldBe(0, error.GetAwaiter().GetResult());
        return program == "chromium" ? output : output + error.GetAwaiter().GetResult();
    }
}
