using System.Collections.Frozen;
using PanelTui.Engine.Panels;
using PanelTui.Presentation;

namespace PanelTui.Tests.Presentation;

public class FaceTextTests
{
    [Fact]
    public void The_face_reads_as_it_hangs_on_the_wall() => Rows(55).ShouldBe(
    [
        "  # Circuit        VA   A leg A     VA Circuit        #",
        "  1 Shed lights   480  15 │A│┌20   960 Well pump      2",
        "  3 Bench recep…  720  20 │B│└     960                4",
        "  5 ·                     │A│          ·              6",
        "  7 ·                     │B│          ·              8",
        "  9 ·                     │A│          ·             10",
        "11a Fan            60  15 │B│ 20       Spare         12",
        "11b Lamp           40  15 │B│",
    ]);

    [Fact]
    public void Every_row_fills_its_width_at_any_width()
    {
        foreach (var columns in Enumerable.Range(40, 80))
            Runs(columns).AtLeastOne().ShouldAllBe(row => DisplayText.Width(string.Concat(row.Select(run => run.Text))) == columns);
    }

    [Fact]
    public void A_landing_place_is_marked_by_letters_not_by_colour_alone()
    {
        var look = new FaceLook(new SpaceNumber(5), Held: 0, new[] { new SpaceNumber(5) }.ToFrozenSet());
        string.Join('\n', Rows(55, look)).ShouldContain("» lands here");
    }

    private static IEnumerable<string> Rows(int columns, FaceLook? look = null) =>
        Runs(columns, look).Select(row => string.Concat(row.Select(run => run.Text)).TrimEnd());

    private static IEnumerable<IEnumerable<TextRun>> Runs(int columns, FaceLook? look = null)
    {
        var snapshot = Shed.Snapshot();
        var text = new FaceText(snapshot.Schedule!, columns, new CircuitLoads(snapshot.Assessment!).On);
        return Face.Of(snapshot.Schedule!).Lines
            .Select(line => (IEnumerable<TextRun>)text.Row(line, look ?? FaceLook.At(new SpaceNumber(1))))
            .Prepend(text.Header());
    }
}
