using PanelTui.CommandLine;
using InstalledGit = PanelTui.CommandLine.Git;

namespace PanelTui.Tests.Outside;

/// <summary>Where programs come from, and git asked in a repository that would have it run things.</summary>
public sealed class OutsideProgramTests : IDisposable
{
    private readonly HostileRepository _there = new();

    [Theory]
    [InlineData("/usr/bin:/bin", "/usr/bin /bin")]
    [InlineData(".:/usr/bin", "/usr/bin")]
    [InlineData(":/usr/bin:", "/usr/bin")]
    [InlineData("::", "")]
    [InlineData("bin:./bin:../bin:~/bin:/usr/bin", "/usr/bin")]
    [InlineData("/here:/here/:/here/.:/here/below/..:/usr/bin", "/usr/bin")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void A_program_comes_from_absolute_folders_of_PATH_and_never_from_the_current_one(string? path, string folders) =>
        string.Join(' ', OutsideProgram.Trusted(path, "/here")).ShouldBe(folders);

    [Fact]
    public void A_link_to_the_current_folder_is_the_current_folder()
    {
        var link = _there.PathOf("link");
        Directory.CreateSymbolicLink(link, _there.Folder);
        OutsideProgram.Trusted($"{link}:{link}/relative/..:/usr/bin", _there.Folder).ShouldBe(["/usr/bin"]);
    }

    [Fact]
    public void A_file_that_is_not_executable_is_no_program()
    {
        OutsideProgram.Find(HostileRepository.Schedule, [_there.Folder]).ShouldBeNull();
        OutsideProgram.Find("git", [_there.PathOf("relative"), "/usr/bin"]).ShouldBe(_there.PathOf("relative/git"));
    }

    [Theory]
    [InlineData("HEAD")]
    [InlineData("orchard")]
    [InlineData(":0")]
    public void A_revision_is_read_byte_for_byte_and_nothing_runs(string revision)
    {
        var shown = InstalledGit.Show(revision, _there.PathOf(HostileRepository.Schedule));
        shown.Text.ShouldBe(Shed.Text.TrimEnd('\n'), shown.Error);
        _there.Ran.ShouldBeEmpty();
    }

    [Fact]
    public void The_branch_is_told_and_nothing_runs()
    {
        GitPlace.Of(_there.PathOf(HostileRepository.Schedule)).ShouldNotBeNull().Branch.ShouldBe(HostileRepository.Branch);
        _there.Ran.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("--output=out")]
    [InlineData("-x")]
    public void An_option_is_no_revision(string revision) => InstalledGit.Show(revision, _there.PathOf(HostileRepository.Schedule)).Succeeded.ShouldBeFalse();

    /// <summary>A partial clone fetches an object it lacks, with a program that the repository names.</summary>
    [Fact]
    public void A_partial_clone_fetches_nothing()
    {
        var id = _there.Git("rev-parse", $"HEAD:{HostileRepository.Schedule}").Trim();
        File.Delete(_there.PathOf($".git/objects/{id[..2]}/{id[2..]}"));
        File.AppendAllText(_there.PathOf(".git/config"), $"""

            [remote "origin"]
            	url = file://{_there.Folder}
            	promisor = true
            	partialclonefilter = blob:none
            	uploadpack = {_there.PathOf("evil")}
            	proxy = ext::{_there.PathOf("evil")}
            [extensions]
            	partialClone = origin
            [core]
            	repositoryformatversion = 1
            [protocol "ext"]
            	allow = always
            [protocol "file"]
            	allow = always

            """);
        _there.Forget();
        InstalledGit.Show("HEAD", _there.PathOf(HostileRepository.Schedule)).Succeeded.ShouldBeFalse();
        _there.Ran.ShouldBeEmpty();
        _there.Git("-c", "core.fsmonitor=false", "cat-file", "blob", id);
        _there.Ran.ShouldContain("evil", Case.Sensitive, "the trap itself does not work");
    }

    [Fact]
    public void A_git_file_that_points_elsewhere_and_a_work_tree_elsewhere_run_nothing()
    {
        Directory.Move(_there.PathOf(".git"), _there.PathOf("elsewhere"));
        File.WriteAllText(_there.PathOf(".git"), $"gitdir: {_there.PathOf("elsewhere")}\n");
        _there.Forget();
        GitPlace.Of(_there.PathOf(HostileRepository.Schedule)).ShouldNotBeNull().Branch.ShouldBe(HostileRepository.Branch);
        File.AppendAllText(_there.PathOf("elsewhere/config"), "[core]\n\tworktree = /\n");
        _ = GitPlace.Of(_there.PathOf(HostileRepository.Schedule));
        _ = InstalledGit.Show("HEAD", _there.PathOf(HostileRepository.Schedule));
        _there.Ran.ShouldBeEmpty();
    }

    public void Dispose() => _there.Dispose();
}
