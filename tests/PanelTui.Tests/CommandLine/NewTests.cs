namespace PanelTui.Tests.CommandLine;

/// <summary>`paneltui new` with a person at the terminal, and without.</summary>
public class NewTests
{
    private static readonly string[] Typed =
        ["Barn: east", "", "", "16", "100", "lugs", "2", "", "gen", "7.5", "", "1", "30", "L14-30", "3", "50", "no", "", "1 3 9"];

    [Fact]
    public void The_answers_make_a_commented_file_that_check_finds_no_error_in()
    {
        using var folder = new TempFolder();
        var file = folder.File("barn.panel.yaml");
        var ran = Ran.Answering(Typed, "new", file);
        ran.Code.ShouldBe(0, ran.Error);
        ran.Out.ShouldEndWith($"Wrote {file}. Open it: paneltui {file}\n");
        Golden.ShouldMatch(File.ReadAllText(file), "new-from-questions");
        Ran.Of("check", file).Out.ShouldContain(": 0 errors");
    }

    [Fact]
    public void Giving_up_writes_nothing()
    {
        using var folder = new TempFolder();
        var file = folder.File("barn.panel.yaml");
        var ran = Ran.Answering(["Barn"], "new", file);
        ran.Code.ShouldBe(2);
        ran.Error.ShouldBe("paneltui: given up; nothing has been written\n");
        File.Exists(file).ShouldBeFalse();
    }

    [Fact]
    public void A_file_that_is_there_is_refused_before_the_first_question()
    {
        using var folder = new TempFolder();
        var ran = Ran.Answering(Typed, "new", folder.File("barn.panel.yaml", "schedule: 1\n"));
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
    }

    [Fact]
    public void The_small_example_is_written_without_a_question_where_it_is_asked_for()
    {
        using var folder = new TempFolder();
        var file = folder.File("barn.panel.yaml");
        Ran.Answering([], "new", "--template", file).Code.ShouldBe(0);
        File.ReadAllText(file).ShouldBe(Ran.Of("new", "-").Out);
    }

    [Fact]
    public void Opening_a_schedule_that_does_not_exist_asks_the_same_questions()
    {
        using var folder = new TempFolder();
        var ran = Ran.Answering(["Barn"], folder.File("barn.panel.yaml"));
        ran.Out.ShouldContain("barn.panel.yaml does not exist yet.\n");
        ran.Out.ShouldContain(" 1 What is the panel called?");
        ran.Error.ShouldBe("paneltui: given up; nothing has been written\n");
    }

    [Fact]
    public void A_mistyped_command_is_still_told_and_asks_nothing() =>
        Ran.Answering([], "chek").Error.ShouldContain("Did you mean the command 'check'?");
}
