using PanelTui.Documents.Intents;
using PanelTui.Editing;
using PanelTui.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Work that takes long is announced before it goes on; work that does not is done without a word.</summary>
public class BusyTests
{
    [Fact]
    public void A_change_to_a_file_that_took_long_to_read_says_what_the_editor_is_busy_with_and_then_that_it_is_done()
    {
        var painted = new List<string>();
        using var folder = new TempFolder();
        var session = Session.Open(folder.File("shed.panel.yaml", Shed.Text), new SlowClock(TimeSpan.FromSeconds(0.4))).Session!;
        using var program = new Driven(_ => new EditorScreen(session));
        session.Changed += () => painted.Add(program.Painted.Split('\n')[^1]); // what stands on the terminal when the work is done, before it is shown
        program.Do(_ => session.Do(now => SetField.In(now, Places.Circuit(0).Then("name"), "Barn lights")).ShouldBeNull());
        painted[0].ShouldBe(" Applying the change ...");
        program.Screen.ShouldContain("Barn lights");
        program.Screen.Split('\n')[^1].ShouldNotContain("...");
    }

    [Fact]
    public void Undo_of_a_long_change_is_announced_as_well()
    {
        using var folder = new TempFolder();
        var session = Session.Open(folder.File("shed.panel.yaml", Shed.Text), new SlowClock(TimeSpan.FromSeconds(0.4))).Session!;
        session.Do(now => SetField.In(now, Places.Circuit(0).Then("name"), "Barn lights")).ShouldBeNull();
        var said = Announced(session.Pace);
        session.Undo();
        session.Redo();
        said.ShouldBe(["Applying the change ...", null, "Applying the change ...", null]);
    }

    [Fact]
    public void A_file_of_a_usual_length_is_edited_without_a_word()
    {
        using var folder = new TempFolder();
        var session = Session.Open(folder.File("shed.panel.yaml", Shed.Text), new SlowClock(TimeSpan.FromSeconds(0.29))).Session!;
        var said = Announced(session.Pace);
        session.Do(now => SetField.In(now, Places.Circuit(0).Then("name"), "Barn lights")).ShouldBeNull();
        said.ShouldBeEmpty();
        session.Schedule.Circuits[0].Name.ShouldBe("Barn lights");
    }

    [Fact]
    public void Work_that_was_long_the_last_time_is_announced_and_work_that_was_short_is_not()
    {
        var clock = new SlowClock(TimeSpan.FromSeconds(0.1));
        var pace = new Pace(clock);
        pace.Reading(() => 1);
        var said = Announced(pace);
        pace.Of("Sorting ...", () => { });
        said.ShouldBeEmpty();
        clock.Step = TimeSpan.FromSeconds(2);
        pace.Of("Sorting ...", () => { });
        said.ShouldBeEmpty("nobody could know");
        clock.Step = TimeSpan.FromSeconds(0.1);
        pace.Of("Sorting ...", () => { });
        said.ShouldBe(["Sorting ...", null]);
        pace.Of("Sorting ...", () => { });
        said.Count.ShouldBe(2);
    }

    [Fact]
    public void Work_inside_other_work_is_a_part_of_it()
    {
        var pace = new Pace(new SlowClock(TimeSpan.FromSeconds(1)));
        pace.Reading(() => 1);
        var said = Announced(pace);
        pace.Of("Merging ...", () => pace.Of("Applying the change ...", () => { }));
        said.ShouldBe(["Merging ...", null]);
    }

    [Fact]
    public void A_letter_typed_into_a_form_of_a_large_file_is_answered_by_the_figures_and_the_form_is_left_as_usual()
    {
        using var folder = new TempFolder();
        var session = Session.Open(folder.File("shed.panel.yaml", Shed.Text), new SlowClock(TimeSpan.FromSeconds(0.4))).Session!;
        using var program = new Driven(_ => new EditorScreen(session));
        program.Press(Key.Enter).Type("Barn").Press(Key.Enter);
        program.Screen.ShouldContain("Barn");
        program.Press(Key.Esc);
        session.Hand.ShouldBeNull();
    }

    private static List<string?> Announced(Pace pace)
    {
        var said = new List<string?>();
        pace.Announced += said.Add;
        return said;
    }

    /// <summary>A clock on which everything that is measured takes the same time.</summary>
    private sealed class SlowClock(TimeSpan step) : TimeProvider
    {
        private long _now;

        public TimeSpan Step { get; set; } = step;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => _now += Step.Ticks;
    }
}
