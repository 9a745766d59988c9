using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Merging;

/// <summary>A file with conflict markers told apart again into the versions that were merged.</summary>
public class MarkedVersionsTests
{
    private const string Base = "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 8}\ncircuits:\n  - id: pump\n    space: 1\n    breaker: 20 A\n";

    [Fact]
    public void What_our_merge_marks_reads_back_as_what_was_merged()
    {
        var (ours, theirs) = (Base.Replace("20 A", "25 A", StringComparison.Ordinal), Base.Replace("20 A", "30 A", StringComparison.Ordinal));
        var merge = ScheduleMerge.Of(Source(Base), Source(ours), Source(theirs));
        merge.Conflicts.Length.ShouldBe(1);
        var versions = MarkedVersions.Of(Source(merge.WithMarkers(MarkerLabels.Default))).ShouldNotBeNull();
        versions.Ours.Text.ShouldBe(ours);
        versions.Theirs.Text.ShouldBe(theirs);
        versions.Ancestor!.Text.ShouldBe(Base);
    }

    [Fact]
    public void Without_the_middle_part_nothing_is_known_of_what_was_before() =>
        MarkedVersions.Of(Source("a: 1\n<<<<<<< ours\nb: 2\n=======\nb: 3\n>>>>>>> theirs\n")).ShouldNotBeNull().Ancestor.ShouldBeNull();

    [Fact]
    public void Longer_markers_and_windows_line_ends_are_read_too()
    {
        var versions = MarkedVersions.Of(Source("a: 1\r\n<<<<<<<<< ours\r\nb: 2\r\n=========\r\nb: 3\r\n>>>>>>>>> theirs\r\n")).ShouldNotBeNull();
        versions.Ours.Text.ShouldBe("a: 1\r\nb: 2\r\n");
        versions.Theirs.Text.ShouldBe("a: 1\r\nb: 3\r\n");
    }

    [Theory]
    [InlineData("a: 1\n")]
    [InlineData("a: 1\n<<<<<<< ours\nb: 2\n=======\nb: 3\n")]
    [InlineData("a: 1\n<<<<<<< ours\nb: 2\n>>>>>>> theirs\n")]
    [InlineData("a: 1\n<<<<<<< ours\n<<<<<<< again\nb: 2\n=======\nb: 3\n>>>>>>> theirs\n")]
    [InlineData("note: |\n  <<<<<< six are no marker\n")]
    public void What_is_torn_or_no_marker_is_left_alone(string text) => MarkedVersions.Of(Source(text)).ShouldBeNull();

    private static SourceText Source(string text) => SourceText.FromString(text);
}
