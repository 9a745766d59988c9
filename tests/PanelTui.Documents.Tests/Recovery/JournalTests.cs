using System.Collections.Immutable;
using System.Runtime.Versioning;
using System.Security.Cryptography;
using System.Text;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Tests.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Recovery;

/// <summary>Unsaved work on the disk: written from change to change, read again by another run.</summary>
[UnsupportedOSPlatform("windows")]
public class JournalTests : TestFolder
{
    private const string Before = "a: 1 # Ä\nb: 2\n";

    [Fact]
    public void Work_that_was_kept_is_found_again_with_all_its_changes()
    {
        using (var journal = NewJournal())
        {
            Keep(journal, "a: 12 # Ä\nb: 2\n", 1);
            Keep(journal, "a: 12 # Ä\nb: \"🙂\"\n", 2);
        }

        var work = FoundAfterDeath().ShouldHaveSingleItem();
        work.Text.Text.ShouldBe("a: 12 # Ä\nb: \"🙂\"\n");
        work.Began.Text.ShouldBe(Before);
        work.Changes.ShouldBe(2);
        work.At.ShouldNotBe(default);
    }

    [Fact]
    public void Nothing_is_ever_written_beside_the_schedule()
    {
        using var journal = NewJournal();
        Keep(journal, "a: 2\n", 1);
        Names().ShouldBe(["a.yaml", "state"]);
        journal.Clear();
        Directory.GetFiles(PathOf("state"), "*", SearchOption.AllDirectories).ShouldBeEmpty();
    }

    [Fact]
    public void A_text_that_is_kept_already_is_not_written_again()
    {
        using var journal = NewJournal();
        Keep(journal, "a: 2\n", 1);
        var (writes, bytes) = (journal.Writes, journal.Bytes);
        Keep(journal, "a: 2\n", 1);
        (journal.Writes, journal.Bytes).ShouldBe((writes, bytes));
    }

    [Fact]
    public void A_change_costs_a_line_and_not_the_whole_text()
    {
        using var journal = NewJournal();
        var text = string.Concat(Enumerable.Range(0, 5000).Select(line => $"line{line}: 1\n"));
        var source = SourceText.FromString(text);
        journal.Keep(Schedule, source, text + "x: 1\n", 1);
        var before = journal.Bytes;
        journal.Keep(Schedule, source, text + "x: 12\n", 2);
        (journal.Bytes - before).ShouldBeLessThan(200);
    }

    [Fact]
    public void Only_the_user_can_read_what_is_kept()
    {
        using var journal = NewJournal();
        Keep(journal, "a: 2\n", 1);
        File.GetUnixFileMode(TheJournal).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.GetUnixFileMode(Path.GetDirectoryName(TheJournal)!)
            .ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    [Fact]
    public void Wherever_the_last_line_is_cut_short_the_work_before_it_is_found()
    {
        var whole = WrittenTwice();
        var first = Array.IndexOf(whole, (byte)'\n', Array.IndexOf(whole, (byte)'\n') + 1);
        for (var cut = first; cut < whole.Length - 1; cut += 7)
        {
            File.WriteAllBytes(TheJournal, whole[..cut]);
            FoundAfterDeath().ShouldHaveSingleItem().Text.Text.ShouldBe("a: 2\n");
        }
    }

    [Fact]
    public void A_journal_cut_before_the_first_change_offers_nothing_and_breaks_nothing()
    {
        var whole = WrittenTwice();
        for (var cut = 0; cut < Array.IndexOf(whole, (byte)'\n') + 5; cut += 11)
        {
            File.WriteAllBytes(TheJournal, whole[..cut]);
            FoundAfterDeath().ShouldBeEmpty();
        }
    }

    [Fact]
    public void A_line_with_one_wrong_byte_does_not_count()
    {
        var whole = WrittenTwice();
        var at = Array.LastIndexOf(whole, (byte)'3');
        whole[Array.LastIndexOf(whole, (byte)'m') + 5] ^= 1; // within the sum
        at.ShouldBePositive();
        File.WriteAllBytes(TheJournal, whole);
        FoundAfterDeath().ShouldHaveSingleItem().Text.Text.ShouldBe("a: 2\n");
    }

    [Fact]
    public void Work_that_the_file_holds_already_is_removed_without_a_word()
    {
        using (var journal = NewJournal()) Keep(journal, "a: 2\n", 1);
        Die();
        UnsavedWork.Of(State, Schedule, SourceText.FromString("a: 2\n")).ShouldBeEmpty();
        Directory.GetFiles(Path.GetDirectoryName(TheJournalOrNone)!).ShouldBeEmpty();
    }

    [Fact]
    public void Work_of_a_run_that_still_goes_on_is_not_offered()
    {
        using var journal = NewJournal();
        Keep(journal, "a: 2\n", 1);
        UnsavedWork.Of(State, Schedule, SourceText.FromString(Before)).ShouldBeEmpty();
        File.Exists(TheJournal).ShouldBeTrue();
    }

    [Fact]
    public void The_newest_work_comes_first_whatever_the_clock_says()
    {
        foreach (var text in (string[])["a: 2\n", "a: 3\n"])
        {
            using var journal = NewJournal();
            Keep(journal, text, 1);
        }

        FoundAfterDeath().Select(work => work.Text.Text).ShouldBe(["a: 3\n", "a: 2\n"]);
    }

    [Fact]
    public void Work_put_aside_can_be_opened_as_a_schedule()
    {
        using (var journal = NewJournal()) Keep(journal, "a: 2\n", 1);
        var aside = FoundAfterDeath().Single().PutAside(Schedule);
        File.ReadAllText(aside).ShouldBe("a: 2\n");
        FoundAfterDeath().ShouldBeEmpty();
    }

    [Fact]
    public void Of_the_works_put_aside_the_last_few_stay()
    {
        for (var round = 0; round < 8; round++)
        {
            using (var journal = NewJournal()) Keep(journal, $"a: {round}{round}\n", 1);
            FoundAfterDeath().Single().PutAside(Schedule);
        }

        Directory.GetFiles(Path.GetDirectoryName(TheJournalOrNone)!).Length.ShouldBe(5);
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_told()
    {
        using var journal = new Journal(new StateFolder("/proc/none"), TimeProvider.System);
        Should.Throw<FileProblem>(() => Keep(journal, "a: 2\n", 1)).Message
            .ShouldStartWith("Unsaved work cannot be kept in /proc/none: ");
    }

    [Fact]
    public void After_a_save_the_work_begins_with_the_saved_text()
    {
        using (var journal = NewJournal())
        {
            Keep(journal, "a: 2\n", 1);
            journal.Keep(Schedule, SourceText.FromString("a: 2\n"), "a: 3\n", 1);
        }

        FoundAfterDeath().ShouldHaveSingleItem().Began.Text.ShouldBe("a: 2\n");
    }

    /// <summary>The lines and the folder's name as 0.1.0 made them, with the SHA-256 of the framework.</summary>
    [Fact]
    public void A_journal_of_the_first_release_is_offered()
    {
        var name = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Schedule)))[..32];
        var folder = Directory.CreateDirectory(Path.Combine(PathOf("state"), "recovery", name));
        const string owner = """{"process":999999999,"started":1,"boot":"","host":"HOST","user":"someone"}""";
        var head = $$"""{"paneltui-journal":"1","path":"a.yaml","bom":false,"text":"a: 1\nb: 2\n","owner":{{owner.Replace("HOST", Environment.MachineName, StringComparison.Ordinal)}}}""";
        const string entry = """{"at":"2025-01-01T00:00:00+00:00","changes":1,"edits":[4,0,"2"],"sum":"38a7d395c5f297de"}""";
        File.WriteAllText(Path.Combine(folder.FullName, "1.journal"), $"{head}\n{entry}\n");
        UnsavedWork.Of(State, Schedule, SourceText.FromString(Before)).ShouldHaveSingleItem().Text.Text.ShouldBe("a: 12\nb: 2\n");
    }

    private StateFolder State => new(PathOf("state"));

    private string Schedule => File.Exists(PathOf("a.yaml")) ? PathOf("a.yaml") : Write("a.yaml", Before);

    private string TheJournal => Directory.GetFiles(PathOf("state"), "*.journal", SearchOption.AllDirectories).ShouldHaveSingleItem();

    private string TheJournalOrNone => Path.Combine(State.Of(Schedule), "1.journal");

    private Journal NewJournal() => new(State, TimeProvider.System);

    private void Keep(Journal journal, string text, int changes) => journal.Keep(Schedule, SourceText.FromString(Before), text, changes);

    private byte[] WrittenTwice()
    {
        using (var journal = NewJournal())
        {
            Keep(journal, "a: 2\n", 1);
            Keep(journal, "a: 2\nb: 3\n", 2);
        }

        Die();
        return File.ReadAllBytes(TheJournal);
    }

    /// <summary>As if the run that wrote had ended: another start of the same process number.</summary>
    private void Die()
    {
        foreach (var file in Directory.GetFiles(PathOf("state"), "*.journal", SearchOption.AllDirectories))
            File.WriteAllText(file, File.ReadAllText(file).Replace($"\"started\":{Owner.Here.Started}", "\"started\":1", StringComparison.Ordinal));
    }

    private ImmutableArray<UnsavedWork> FoundAfterDeath()
    {
        Die();
        return UnsavedWork.Of(State, Schedule, SourceText.FromString(Before));
    }
}
