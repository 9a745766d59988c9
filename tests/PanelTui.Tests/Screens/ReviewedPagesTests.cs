using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>What the pages and the rows below the face owe to whoever never read a manual.</summary>
public class ReviewedPagesTests
{
    private const string Mistyped = """
        schedule: 1
        panel: {name: Shed, system: 120/240 V 1ph 3W, spaces: 8}
        circuits:
          - {id: bench, space: 1, name: Bench, breaker: 20 A, protectoin: gfci, loads: [{kind: receptacle}]}
        """;

    [Fact]
    public void A_mistyped_key_is_told_beside_the_face_and_on_the_page_of_findings()
    {
        using var editor = new OpenEditor(Mistyped, 120, 40);
        editor.Screen.ShouldContain("0 E 0 W 1 N");
        editor.Screen.ShouldContain("\"protectoin\"");
        string.Join(' ', editor.Press(Key.F.WithShift).Screen.Split('\n').Select(line => line.Trim())).ShouldContain("did you mean protection?");
        editor.Screen.ShouldContain("Noted in the file itself");
        editor.Screen.ShouldContain("N line 4");
    }

    [Fact]
    public void No_finding_is_no_approval_of_what_is_not_stated()
    {
        using var editor = new OpenEditor(Mistyped.Replace("protectoin: gfci, ", "", StringComparison.Ordinal), 120, 40);
        editor.Screen.ShouldContain("Findings");
        editor.Screen.ShouldContain("Not stated: bus, feeder,");
        editor.Press(Key.F.WithShift).Screen.ShouldContain("Not stated, so not checked: bus, feeder, transfer rating, source limit, wires.");
    }

    [Fact]
    public void The_keys_that_are_shown_are_those_of_the_page_below()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.B, new Key('?')).Screen.ShouldContain("Keys here, on: ");
        editor.Screen.ShouldNotContain("Place a two-pole breaker");
        editor.Press(Key.CursorRight).Screen.ShouldContain("Keys on the face of the panel");
        editor.Press(Key.CursorRight).Screen.ShouldContain("How to");
        editor.Press(Key.Esc).Screen.ShouldContain("Balance");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_next_finding_is_said_with_what_to_do_and_the_section(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        foreach (var finding in editor.Session.Assessment.Findings.AtLeastOne())
        {
            var screen = string.Join(' ', editor.Press(Key.F).Screen.Split('\n').Select(line => line.Trim()));
            screen.ShouldContain($"{finding.Mend} ({finding.Cite})");
        }
    }

    [Fact]
    public void A_finding_is_accepted_where_it_is_listed()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")));
        var first = editor.Session.Assessment.Findings[0];
        editor.Press(Key.F.WithShift, Key.A).Type("seen by the inspector").Press(Key.Enter);
        editor.Session.Assessment.Accepted.ShouldContain(accepted => accepted.Finding.Rule == first.Rule && accepted.Because == "seen by the inspector");
        editor.Press(Key.U).Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void Where_a_file_is_open_to_look_only_no_key_promises_a_change_and_nothing_typed_is_thrown_away()
    {
        using var desk = new DeskEditor((desk, path) => desk.LockElsewhere(path));
        desk.Editor.Press(Key.Esc);
        desk.Editor.Keys.ShouldNotContain("edit");
        desk.Editor.Keys.ShouldNotContain("carry");
        foreach (var key in (Key[])[Key.Enter, Key.Space, Key.E])
        {
            desk.Editor.Press(key).Screen.ShouldContain("to look only");
            desk.Editor.Session.Hand.ShouldBeNull();
        }
    }

    [Fact]
    public void A_letter_that_means_nothing_says_so_on_the_face_and_on_a_page()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.Z).Screen.ShouldContain("z does nothing here; ? tells the keys");
        editor.Press(Key.F.WithShift, Key.Z).Screen.ShouldContain("z does nothing here");
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void A_window_too_small_says_so_in_as_many_rows_as_it_takes()
    {
        using var editor = new OpenEditor(columns: 22, rows: 6);
        string.Join(' ', editor.Screen.Split('\n').Select(line => line.Trim())).ShouldContain("The window is too small: 40 x 10 is needed.");
    }
}
