using System.Collections.Immutable;
using System.Text.Json;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Recovery;

/// <summary>Work that was not saved when the run it belongs to came to its end.</summary>
/// <param name="Owner">That run.</param>
/// <param name="Began">The text on disk that the work began with.</param>
/// <param name="Text">What would have been saved.</param>
/// <param name="Changes">How many steps of the user lie between the two.</param>
/// <param name="At">When it was kept last, by the clock of that time.</param>
public sealed record UnsavedWork(Owner Owner, SourceText Began, SourceText Text, int Changes, DateTimeOffset At)
{
    private const int KeptAside = 5;

    private string Journal { get; init; } = "";

    /// <summary>
    /// What ended runs have left for this schedule, the newest first. Work that the file holds already is removed without a word.
    /// </summary>
    /// <param name="state">Where journals are.</param>
    /// <param name="schedule">The file that is opened.</param>
    /// <param name="onDisk">What it holds.</param>
    public static ImmutableArray<UnsavedWork> Of(StateFolder state, string schedule, SourceText onDisk)
    {
        var folder = state.Of(schedule);
        if (!Directory.Exists(folder)) return [];
        var found = Directory.GetFiles(folder, $"*{Recovery.Journal.Ending}")
            .OrderByDescending(Recovery.Journal.NumberOf)
            .Select(Read)
            .OfType<UnsavedWork>()
            .Where(work => !work.Owner.MayGoOn)
            .ToLookup(work => work.Text.Text == onDisk.Text || work.Text.Text == work.Began.Text);
        foreach (var idle in found[true]) idle.Forget();
        return [.. found[false]];
    }

    /// <summary>Removes it, for it has been taken up or is of no use.</summary>
    public void Forget() => File.Delete(Journal);

    /// <summary>Puts it aside as a schedule that can be opened, so that nothing is lost by a wrong answer; its path.</summary>
    /// <exception cref="FileProblem">It cannot be put aside, and stays.</exception>
    public string PutAside(string schedule)
    {
        var folder = Path.GetDirectoryName(Journal)!;
        var aside = Path.Combine(folder, $"{Recovery.Journal.NumberOf(Journal)}-{UniqueName.New()}-{Path.GetFileName(schedule)}");
        ScheduleFile.Save(aside, Text, DiskState.Missing);
        Forget();
        var all = new DirectoryInfo(folder).GetFiles($"*-{Path.GetFileName(schedule)}");
        foreach (var old in all.OrderByDescending(file => file.LastWriteTimeUtc).Skip(KeptAside)) old.Delete();
        return aside;
    }

    // What cannot be read is no work of this version of the program, and is left alone.
    private static UnsavedWork? Read(string journal)
    {
        try
        {
            var lines = File.ReadAllLines(journal);
            var (owner, began) = JournalLines.ReadHead(lines[0]);
            return Replayed(new UnsavedWork(owner, began, began, 0, default) { Journal = journal }, lines.Skip(1));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or IndexOutOfRangeException || IsDamage(error))
        {
            return null;
        }
    }

    // A last line that was cut short by the end of the run, and all that follows a damaged one, does not count.
    private static UnsavedWork Replayed(UnsavedWork work, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            try
            {
                var (text, changes, at) = JournalLines.ReadEntry(line, work.Text.Text);
                work = work with { Text = work.Text.WithText(text), Changes = changes, At = at };
            }
            catch (Exception error) when (IsDamage(error))
            {
                return work;
            }
        }

        return work;
    }

    private static bool IsDamage(Exception error) => error
        is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException or YamlProblem;
}
