using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>The face of a panel, line by line from the top, as it hangs on the wall.</summary>
internal sealed class Face
{
    private readonly Schedule _schedule;
    private readonly ILookup<int, (SpaceNumber Space, Circuit Circuit, int Pole)> _taken;

    private Face(Schedule schedule)
    {
        _schedule = schedule;
        _taken = schedule.Circuits
            .SelectMany(circuit => circuit.Spaces.Select((space, pole) => (Space: space, Circuit: circuit, Pole: pole)))
            .ToLookup(taken => taken.Space.Number);
        var rows = (schedule.Panel.Spaces + 1) / 2;
        Lines = [.. Enumerable.Range(0, rows).SelectMany(LinesOf)];
    }

    public ImmutableArray<FaceLine> Lines { get; }

    public static Face Of(Schedule schedule) => new(schedule);

    /// <summary>The cell at or nearest to a space: its other half, or the whole, where the space is split or joined.</summary>
    public FaceCell? At(SpaceNumber space)
    {
        var cells = Lines.Select(line => line.On(space.IsLeft)).Where(cell => cell?.Space.Number == space.Number).ToList();
        return cells.FirstOrDefault(cell => cell!.Space.Half == space.Half) ?? cells.FirstOrDefault();
    }

    /// <summary>The line that a space is on, from 0; below 0 where the panel has no such space.</summary>
    public int LineOf(SpaceNumber space)
    {
        var cell = At(space);
        return cell is null ? -1 : Lines.ToList().FindIndex(line => ReferenceEquals(line.On(space.IsLeft), cell));
    }

    /// <summary>A row is one line, or two where tandem halves sit in it on either side.</summary>
    private IEnumerable<FaceLine> LinesOf(int row)
    {
        var odd = (2 * row) + 1;
        var (left, right) = (CellsOf(odd), odd < _schedule.Panel.Spaces ? CellsOf(odd + 1) : []);
        var leg = _schedule.Panel.System.LegOf(new SpaceNumber(odd));
        for (var line = 0; line < Math.Max(left.Length, right.Length); line++)
            yield return new FaceLine(leg, left.ElementAtOrDefault(line), right.ElementAtOrDefault(line));
    }

    private ImmutableArray<FaceCell> CellsOf(int number) => _taken[number].Any(taken => taken.Space.IsHalf)
        ? [Cell(new SpaceNumber(number, SpaceHalf.A)), Cell(new SpaceNumber(number, SpaceHalf.B))]
        : [Cell(new SpaceNumber(number))];

    private FaceCell Cell(SpaceNumber space)
    {
        var here = _taken[space.Number].Where(taken => taken.Space.Overlaps(space)).ToList();
        var leg = _schedule.Panel.System.LegOf(space);
        return here.Count == 0
            ? new FaceCell(space, leg, null, 0, false)
            : new FaceCell(space, leg, here[0].Circuit, here[0].Pole, here.Count > 1);
    }
}
