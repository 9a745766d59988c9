namespace PanelTui.Tests.Git;

/// <summary>Against the git that is installed: what it does with the driver that `git-setup` names.</summary>
public class GitTests
{
    private const string Base = """
        schedule: 1
        panel: {system: 120/240 V 1ph 3W, spaces: 12}
        circuits:
          - id: lights
            space: 1
            name: Lights
            breaker: 15 A
          - id: pump
            space: 2
            name: Pump
            breaker: 20 A

        """;

    private static readonly string Ours = Base.Replace("name: Lights", "name: Yard lights", StringComparison.Ordinal);

    // The neighbouring line: git's own merge of lines stops here.
    private static readonly string Theirs = Base.Replace("15 A", "20 A", StringComparison.Ordinal);

    private static readonly string Both = Ours.Replace("15 A", "20 A", StringComparison.Ordinal);

    [Theory]
    [InlineData("merge", "side", "-m", "both")]
    [InlineData("cherry-pick", "side")]
    [InlineData("rebase", "side")]
    public void Git_brings_two_changes_of_one_circuit_together(params string[] command)
    {
        using var repository = Forked(Ours, Theirs);
        repository.Must("git", command);
        repository.Schedule.ShouldBe(Both);
    }

    [Fact]
    public void Stashed_work_comes_back_onto_a_newer_commit()
    {
        using var repository = new Repository(Base);
        repository.Schedule = Theirs;
        repository.Must("git", "stash");
        repository.Commit(Ours, "ours");
        repository.Must("git", "stash", "pop");
        repository.Schedule.ShouldBe(Both);
    }

    [Fact]
    public void Two_breakers_in_one_space_stop_a_merge_that_lines_find_clean()
    {
        using var repository = Forked(
            Base.Replace("space: 1\n", "space: 7\n", StringComparison.Ordinal), Base.Replace("space: 2\n", "space: 7\n", StringComparison.Ordinal));
        repository.Run("git", "merge", "side").Code.ShouldBe(1);
        repository.Schedule.ShouldContain("<<<<<<< ours\n    space: 2\n");
    }

    [Fact]
    public void A_version_that_is_no_schedule_leaves_marks_and_both_versions()
    {
        using var repository = Forked(Ours, "circuits: [1\n");
        var (code, said) = repository.Run("git", "merge", "side");
        code.ShouldBe(1);
        said.ShouldContain("cannot be read");
        repository.Schedule.ShouldContain("<<<<<<< ours");
        repository.Schedule.ShouldContain("Yard lights");
        repository.Schedule.ShouldContain("circuits: [1");
    }

    [Fact]
    public void Git_diff_shows_facts_with_the_circuit_they_belong_to()
    {
        using var repository = new Repository(Base);
        repository.Schedule = Theirs;
        var (_, said) = repository.Run("git", "diff");
        said.ShouldContain("-/circuits[lights]/breaker: 15 A");
        said.ShouldContain("+/circuits[lights]/breaker: 20 A");
    }

    [Fact]
    public void Diff_compares_with_a_revision()
    {
        using var repository = Forked(Ours, Theirs);
        var (code, said) = repository.Run("paneltui", "diff", "side", Repository.Name);
        code.ShouldBe(1);
        said.ShouldContain("~ Yard lights (space 1): name Yard lights, was Lights");
        said.ShouldContain("~ Yard lights (space 1): breaker 15 A, was 20 A");
        repository.Run("paneltui", "diff", Repository.Name).Code.ShouldBe(0);
        repository.Run("paneltui", "diff", "no-such", Repository.Name).Code.ShouldBe(2);
    }

    [Fact]
    public void Git_setup_check_tells_what_is_missing()
    {
        using var repository = new Repository(Base);
        repository.Run("paneltui", "git-setup", "--check").Code.ShouldBe(0);
        repository.Must("git", "config", "--unset", "merge.panel.driver");
        var (code, said) = repository.Run("paneltui", "git-setup", "--check");
        code.ShouldBe(1);
        said.ShouldContain("git config merge.panel.driver");
    }

    /// <summary>Set up as it should be, and yet another program of that name comes first on the path.</summary>
    [Fact]
    public void Git_setup_check_tries_a_merge_and_says_what_does_not_run()
    {
        using var repository = new Repository(Base);
        repository.Executable("bin", "#!/bin/sh\nexit 0\n");
        var (code, said) = repository.Run(repository.Real, "git-setup", "--check");
        code.ShouldBe(1);
        said.ShouldContain("does not run: git config merge.panel.driver; git merges lines instead");
        said.ShouldContain("does not run: git config diff.panel.textconv; git shows lines instead");
    }

    [Fact]
    public void Git_setup_check_tells_of_a_schedule_that_another_line_takes_out()
    {
        using var repository = new Repository(Base);
        File.AppendAllText(Path.Combine(repository.Top, ".gitattributes"), "shed.panel.yaml -merge\n");
        var (code, said) = repository.Run("paneltui", "git-setup", "--check");
        code.ShouldBe(1);
        said.ShouldContain("git does not use it for shed.panel.yaml: the attribute merge is unset");
    }

    private static Repository Forked(string ours, string theirs)
    {
        var repository = new Repository(Base);
        repository.Must("git", "checkout", "-q", "-b", "side");
        repository.Commit(theirs, "theirs");
        repository.Must("git", "checkout", "-q", "main");
        repository.Commit(ours, "ours");
        return repository;
    }
}
