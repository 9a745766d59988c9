using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Merging;

public class ScheduleMergeTests
{
    private const string Base = """
        schedule: 1
        panel:
          name: Shed   # as on the door
          system: 120/240 V 1ph 3W
          spaces: 12
        circuits:
          # the old one
          - id: lights
            space: 1
            name: Lights
            breaker: 15 A
            loads:
              - {kind: lighting, rating: 480 W}

          - id: pump
            space: 2
            name: Well pump
            breaker: 20 A
            poles: 2

          - {space: 5, name: Spare, breaker: 20 A, spare: yes}
        scenarios:
          - name: Night
            running: [lights]

        """;

    /// <summary>What was typed on an entry is asked about, not lost with it.</summary>
    [Fact]
    public void A_comment_on_an_entry_that_the_other_side_removed_is_asked_about()
    {
        var without = Base.Replace("  - {space: 5, name: Spare, breaker: 20 A, spare: yes}\n", "", StringComparison.Ordinal);
        var noted = Base.Replace("spare: yes}", "spare: yes}   # bought, on the shelf", StringComparison.Ordinal);
        foreach (var (ours, theirs) in new[] { (without, noted), (noted, without) })
        {
            var merge = ScheduleMerge.Of(SourceText.FromString(Base), SourceText.FromString(ours), SourceText.FromString(theirs));
            merge.Conflicts.Length.ShouldBe(1);
            merge.WithMarkers(MarkerLabels.Default).ShouldContain("# bought, on the shelf");
        }
    }

    [Fact]
    public void Changes_of_two_sides_in_one_circuit_are_both_kept() =>
        Clean(Edit("breaker: 15 A", "breaker: 20 A"), Edit("name: Lights", "name: Yard lights # north"))
            .ShouldBe(Edit("breaker: 15 A", "breaker: 20 A").Replace("name: Lights", "name: Yard lights # north", StringComparison.Ordinal));

    [Fact]
    public void Two_keys_in_one_pair_of_braces_are_merged() =>
        Clean(Edit("rating: 480 W", "rating: 500 W"), Edit("rating: 480 W}", "rating: 480 W, continuous: yes}"))
            .ShouldContain("- {kind: lighting, rating: 500 W, continuous: yes}");

    [Fact]
    public void Names_that_both_sides_add_to_a_scenario_are_all_there() =>
        Clean(Edit("[lights]", "[lights, pump]"), Edit("[lights]", "[]")).ShouldContain("running: [pump]");

    [Fact]
    public void A_circuit_moved_in_the_file_and_changed_in_place_is_there_once()
    {
        var spare = "  - {space: 5, name: Spare, breaker: 20 A, spare: yes}\n";
        var moved = Base.Replace(spare, "", StringComparison.Ordinal).Replace("circuits:\n", "circuits:\n" + spare, StringComparison.Ordinal);
        var merged = Clean(Edit("breaker: 20 A, spare", "breaker: 30 A, spare"), moved);
        merged.Split("Spare").Length.ShouldBe(2);
        merged.ShouldContain("circuits:\n  - {space: 5, name: Spare, breaker: 30 A, spare: yes}\n");
    }

    [Fact]
    public void Comments_of_both_sides_stay() =>
        Clean(Edit("# the old one", "# the old one, painted"), Edit("# the old one", "# the old one\n  # from the barn"))
            .ShouldContain("  # the old one, painted\n  # from the barn\n");

    [Fact]
    public void One_value_changed_in_two_ways_is_asked_for()
    {
        var merge = Merge(Edit("breaker: 15 A", "breaker: 20 A"), Edit("breaker: 15 A", "breaker: 25 A"));
        merge.Conflicts.Select(conflict => conflict.ToString()).ShouldBe(["Lights (space 1): breaker was changed on both sides, in two ways"]);
        merge.Settled(MergeSide.Theirs).Text.ShouldBe(Edit("breaker: 15 A", "breaker: 25 A"));
        merge.WithMarkers(MarkerLabels.Default).ShouldContain("""
            <<<<<<< ours
                breaker: 20 A
            ||||||| base
                breaker: 15 A
            =======
                breaker: 25 A
            >>>>>>> theirs (Lights (space 1): breaker was changed on both sides, in two ways)

            """);
    }

    [Fact]
    public void A_circuit_removed_on_one_side_and_changed_on_the_other_is_asked_for()
    {
        var spare = "  - {space: 5, name: Spare, breaker: 20 A, spare: yes}\n";
        var merge = Merge(Base.Replace("\n" + spare, "", StringComparison.Ordinal), Edit("breaker: 20 A, spare", "breaker: 30 A, spare"));
        merge.Conflicts.ShouldHaveSingleItem().What.ShouldBe("it was removed on our side and changed on the other");
    }

    [Fact]
    public void Two_circuits_moved_into_one_space_are_asked_for()
    {
        var merge = Merge(Edit("space: 1\n", "space: 7\n"), Edit("space: 2\n", "space: 7\n"));
        merge.Conflicts.ShouldHaveSingleItem().ToString().ShouldBe("Well pump (space 2, 4): space was changed on the other side to where there is no room for it");
    }

    [Fact]
    public void A_scenario_that_names_a_circuit_which_the_other_side_removed_is_asked_for()
    {
        var gone = Base.Replace("""
              - id: pump
                space: 2
                name: Well pump
                breaker: 20 A
                poles: 2


            """, "", StringComparison.Ordinal);
        Merge(gone, Edit("[lights]", "[lights, pump]")).Conflicts.ShouldNotBeEmpty();
    }

    [Fact]
    public void Merging_what_one_side_left_alone_gives_the_other_to_the_last_byte()
    {
        var other = Edit("Shed ", "'Barn' ");
        Clean(Base, other).ShouldBe(other);
        Clean(other, Base).ShouldBe(other);
        Clean(other, other).ShouldBe(other);
    }

    [Fact]
    public void Our_line_ends_stay() =>
        Clean(Edit("15 A", "20 A").ReplaceLineEndings("\r\n"), Edit("Shed ", "Barn "))
            .ShouldBe(Edit("15 A", "20 A").Replace("Shed ", "Barn ", StringComparison.Ordinal).ReplaceLineEndings("\r\n"));

    [Fact]
    public void What_cannot_be_read_is_not_merged() => Merge("a: [1\n", Edit("15 A", "20 A")).WhyNot.ShouldNotBeNull().ShouldStartWith("our version cannot be read");

    private static string Edit(string old, string now) => Base.Replace(old, now, StringComparison.Ordinal);

    private static string Clean(string ours, string theirs)
    {
        var merge = Merge(ours, theirs);
        merge.WhyNot.ShouldBeNull();
        merge.Conflicts.ShouldBeEmpty();
        return merge.Settled().Text;
    }

    private static ScheduleMerge Merge(string ours, string theirs) =>
        ScheduleMerge.Of(SourceText.FromString(Base), SourceText.FromString(ours), SourceText.FromString(theirs));
}
