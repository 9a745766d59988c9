using System.Runtime.Versioning;

namespace PanelTui.Tests.Git;

/// <summary>
/// A clone that is set up, and a program that does not do its part: git gives what it gives by itself, and nothing is
/// lost.
/// </summary>
[UnsupportedOSPlatform("windows")]
public class GitAloneTests
{
    private const string Base = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 12}\ncircuits:\n"
        + "  - id: lights\n    space: 1\n    name: Lights\n    breaker: 15 A\n  - id: pump\n    space: 2\n    name: Pump\n    breaker: 20 A\n";

    private static readonly string Ours = Base.Replace("name: Lights", "name: Yard lights", StringComparison.Ordinal);
    private static readonly string Theirs = Base.Replace("15 A", "30 A", StringComparison.Ordinal);

    private static readonly string Marked = Base.Replace(
        "    name: Lights\n    breaker: 15 A\n",
        "<<<<<<< ours\n    name: Yard lights\n    breaker: 15 A\n=======\n    name: Lights\n    breaker: 30 A\n>>>>>>> theirs\n",
        StringComparison.Ordinal);

    [Theory]
    [InlineData("")] // there is none
    [InlineData("#!/bin/sh\nexit 0\n")]
    [InlineData("#!/bin/sh\nexit 1\n")]
    [InlineData("#!/bin/sh\nexit 126\n")]
    [InlineData("#!/bin/sh\nexit 127\n")]
    [InlineData("#!/bin/sh\nexit 137\n")]
    [InlineData("#!/bin/sh\nkill -9 $$\n")]
    [InlineData("#!/bin/sh\necho half >.merge_file_x; for file; do case $file in *.new) echo half >$file;; esac; done; kill -9 $$\n")]
    [InlineData("#!/bin/sh\nfor file; do case $file in *.ours) : >$file;; esac; done; exit 2\n")]
    [InlineData("this is a text\n")]
    [InlineData("\u007fELF of another machine")]
    public void A_program_that_does_not_run_to_its_end_leaves_git_s_own_merge_and_diff(string program)
    {
        using var repository = Forked(program, Ours, Theirs);
        repository.Run("git", "merge", "side").Code.ShouldBe(1);
        repository.Schedule.ShouldBe(Marked);
        repository.Run("git", "diff", "main", "side").Said.ShouldContain("+    breaker: 30 A");
        repository.Must("git", "merge", "--abort");
        repository.Run("git", "clean", "-nd", "-e", ".merge_file_x").Said.ShouldBeEmpty("nothing is left lying about");
    }

    [Theory]
    [InlineData("ulimit -v 60000")]
    [InlineData("ulimit -v 20000")]
    [InlineData("ulimit -n 8")]
    public void A_limit_under_which_the_program_cannot_start_leaves_git_s_own_merge(string limit)
    {
        using var repository = Forked("", Ours, Theirs);
        repository.SetUpFor(repository.Real);
        repository.Run("/bin/sh", "-c", $"{limit}; exec git merge side").Code.ShouldBe(1);
        repository.Schedule.ShouldBe(Marked);
    }

    [Fact]
    public void What_lines_agree_on_is_merged_without_the_program()
    {
        using var repository = Forked("", Ours, Base.Replace("20 A", "30 A", StringComparison.Ordinal));
        repository.Must("git", "merge", "-q", "side", "-m", "both");
        repository.Schedule.ShouldBe(Ours.Replace("20 A", "30 A", StringComparison.Ordinal));
    }

    [Fact]
    public void A_version_that_lines_cannot_be_merged_of_is_marked_as_a_whole()
    {
        using var repository = Forked("", Ours, "\0" + Theirs);
        repository.Run("git", "merge", "side").Code.ShouldBe(1);
        repository.Schedule.ShouldBe($"<<<<<<< ours\n{Ours}\n=======\n\0{Theirs}\n>>>>>>> theirs\n");
    }

    [Fact, UnsupportedOSPlatform("windows")]
    public void A_program_beside_the_schedule_is_not_run()
    {
        using var repository = Forked("", Ours, Theirs);
        var planted = Path.Combine(repository.Top, "paneltui");
        File.WriteAllText(planted, "#!/bin/sh\necho run >ran\n");
        File.SetUnixFileMode(planted, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        repository.Run("/bin/sh", "-c", "PATH=.:$PWD::$PATH; git diff main side; git merge side");
        repository.Schedule.ShouldBe(Marked);
        File.Exists(Path.Combine(repository.Top, "ran")).ShouldBeFalse();
    }

    [Theory]
    [InlineData("-rf.panel.yaml")]
    [InlineData("100%O %A 'it' \"so\" $(touch ran)`touch ran`.panel.yaml")]
    [InlineData("@two\nlines.panel.yaml")]
    public void A_file_of_any_name_is_merged_and_shown_by_meaning(string name)
    {
        using var repository = Forked("", Ours, Theirs, name);
        repository.SetUpFor(repository.Executable("100%O %A 'it'", File.ReadAllText(repository.Real)));
        repository.Must("git", "merge", "-q", "side", "-m", "both");
        repository.Schedule.ShouldBe(Ours.Replace("15 A", "30 A", StringComparison.Ordinal));
        repository.Schedule = Ours;
        repository.Run("git", "diff").Said.ShouldContain("+/circuits[lights]/breaker: 15 A");
        File.Exists(Path.Combine(repository.Top, "ran")).ShouldBeFalse();
    }

    [Theory]
    [InlineData(".gitattributes", "Git does not follow it, and neither does git-setup.")]
    [InlineData(".git/config", "git-setup follows none. Nothing was written.")]
    public void Git_setup_follows_no_link_out_of_the_repository(string name, string sentence)
    {
        using var repository = new Repository(Base, program: "");
        var (link, target) = (Path.Combine(repository.Top, name), repository.Beside("target"));
        File.Move(link, target);
        File.CreateSymbolicLink(link, target);
        var before = File.ReadAllText(target);
        var (code, said) = repository.Run(repository.Real, "git-setup");
        code.ShouldBe(2);
        said.ShouldContain($"{link} is a symbolic link to {target}");
        said.ShouldContain(sentence);
        File.ReadAllText(target).ShouldBe(before);
    }

    [Fact]
    public void Git_setup_check_says_that_git_follows_no_link_to_the_attributes()
    {
        using var repository = new Repository(Base, program: "");
        var attributes = Path.Combine(repository.Top, ".gitattributes");
        File.Move(attributes, repository.Beside("target"));
        File.CreateSymbolicLink(attributes, repository.Beside("target"));
        repository.Must("git", "add", "-A"); // Else git reads the file that is in its index still.
        var (code, said) = repository.Run(repository.Real, "git-setup", "--check");
        code.ShouldBe(1);
        said.ShouldContain("Git does not follow it");
        said.ShouldContain("git does not use it for shed.panel.yaml: the attribute merge is unspecified");
    }

    [Fact]
    public void Git_setup_writes_no_configuration_of_another_repository()
    {
        using var other = new Repository(Base, program: "");
        using var repository = new Repository(Base, program: "");
        var before = File.ReadAllText(Path.Combine(other.Top, ".git", "config"));
        Directory.Delete(Path.Combine(repository.Top, ".git"), recursive: true);
        File.WriteAllText(Path.Combine(repository.Top, ".git"), $"gitdir: {other.Top}/.git\n");
        var (code, said) = repository.Run(repository.Real, "git-setup");
        code.ShouldBe(2);
        said.ShouldContain("which does not name this folder as its own. Nothing was written.");
        File.ReadAllText(Path.Combine(other.Top, ".git", "config")).ShouldBe(before);
    }

    [Fact]
    public void Git_setup_knows_a_linked_work_tree_and_a_submodule_for_the_repository_s_own()
    {
        using var repository = new Repository(Base, program: "");
        repository.Must("git", "worktree", "add", "-q", repository.Beside("linked"));
        repository.Must("/bin/sh", "-c", $"cd '{repository.Beside("linked")}' && '{repository.Real}' git-setup");
        repository.Must("git", "-c", "protocol.file.allow=always", "submodule", "--quiet", "add", repository.Top, "part");
        repository.Must("/bin/sh", "-c", $"cd part && '{repository.Real}' git-setup");
    }

    private static Repository Forked(string program, string ours, string theirs, string name = Repository.Name)
    {
        var repository = new Repository(Base, name, program);
        repository.Must("git", "checkout", "-q", "-b", "side");
        repository.Commit(theirs, "theirs");
        repository.Must("git", "checkout", "-q", "main");
        repository.Commit(ours, "ours");
        return repository;
    }
}
