using PanelTui.Engine.Panels;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets.Diagram;

/// <summary>The one-line diagram from the two supplies down to the circuits.</summary>
internal sealed class OneLine(Schedule schedule)
{
    private const double Width = 540;
    private const double Centre = Width / 2;
    private const double Normal = 130;
    private const double Standby = 410;
    private const double TransferTop = 172;
    private const double TransferEnd = 236;
    private const double PanelTop = 300;
    private const double NoteSize = 8;

    private readonly Sketch _sketch = new();

    public static Drawing Of(Schedule schedule)
    {
        var diagram = new OneLine(schedule);
        diagram.NormalSupply();
        diagram.StandbySupply();
        diagram.Transfer();
        diagram.Feeder();
        var end = new OneLinePanel(schedule, diagram._sketch).Draw(PanelTop, Width);
        foreach (var line in Typeface.Wrap($"Bonds on standby: {SupplyWords.OnStandby(schedule)}", Width - 16, NoteSize, bold: true))
        {
            diagram._sketch.Text(8, end + NoteSize, line, NoteSize, bold: true);
            end += NoteSize * 1.3;
        }

        return diagram._sketch.Done($"One-line diagram of {PanelWords.NameOf(schedule.Panel)}", Width, end + NoteSize);
    }

    private void NormalSupply()
    {
        Symbols.Supply(_sketch, Normal, 34, "");
        _sketch.Text(Normal, 13, "Normal supply", 9, bold: true, align: Align.Middle);
        _sketch.Text(Normal - 22, 33, PanelWords.Or(schedule.Panel.FedFrom, "not stated"), align: Align.Right, room: Normal - 26);
        _sketch.Line(Normal, 49, Normal, 86);
        _sketch.Line(Normal, 64, 84, 64, dashed: true);
        _sketch.Line(84, 64, 84, 70, dashed: true);
        Symbols.Ground(_sketch, 84, 70);
        _sketch.Lines(72, 66, ["bond and electrode", "at the service:", "not in this file"], 7, Align.Right, 70);
        Symbols.BreakerDown(_sketch, Normal, 86);
        _sketch.Lines(Normal + 14, 96, ["feeder device", PanelWords.Stated(schedule.Feeder?.Ocpd)]);
        _sketch.Line(Normal, 110, Normal, TransferTop - 12);
        _sketch.Line(Normal, TransferTop - 12, Centre - 40, TransferTop - 12);
        _sketch.Line(Centre - 40, TransferTop - 12, Centre - 40, TransferTop + 12);
    }

    private void StandbySupply()
    {
        _sketch.Text(Standby, 13, "Standby source", 9, bold: true, align: Align.Middle);
        if (schedule.Source is not { } source)
        {
            _sketch.Text(Standby, 33, "none stated", align: Align.Middle);
            return;
        }

        if (source.Kind == SourceKind.Generator) Symbols.Supply(_sketch, Standby, 34, "G");
        else Symbols.Inverter(_sketch, Standby, 34);
        if (source.Battery is not null) Symbols.Battery(_sketch, Standby + 15, 34);
        var beside = source.Battery is null ? Standby + 22 : Standby + 44;
        _sketch.Lines(beside, 30, SupplyWords.Source(source), room: Width - beside);
        SourceBond(source);
        _sketch.Line(Standby, 49, Standby, 86);
        Symbols.BreakerDown(_sketch, Standby, 86);
        _sketch.Lines(Standby + 14, 96, ["source's breaker", PanelWords.Stated(source.Ocpd)]);
        _sketch.Line(Standby, 110, Standby, 124);
        Inlet(source);
        _sketch.Line(Standby, 144, Standby, TransferTop - 12);
        _sketch.Line(Standby, TransferTop - 12, Centre + 40, TransferTop - 12);
        _sketch.Line(Centre + 40, TransferTop - 12, Centre + 40, TransferTop + 12);
    }

    private void Inlet(StandbySource source)
    {
        if (source.Outlet is not { } outlet)
        {
            _sketch.Line(Standby, 124, Standby, 144);
            return;
        }

        Symbols.Inlet(_sketch, Standby, 124);
        _sketch.Lines(Standby + 14, 133, [$"NEMA {outlet} outlet and inlet", SupplyWords.Cord(source)], room: 115);
    }

    /// <summary>A bonded source is drawn with its bond; the electrode belongs there only where it is a system of its own.</summary>
    private void SourceBond(StandbySource source)
    {
        var isOwn = schedule.Transfer?.NeutralIsSwitched == true;
        if (source.Neutral == SourceNeutral.Bonded || isOwn)
        {
            var stated = source.Neutral == SourceNeutral.Bonded;
            _sketch.Line(Standby, 64, 364, 64, dashed: !stated);
            _sketch.Line(364, 64, 364, 70, dashed: !stated);
            Symbols.Ground(_sketch, 364, 70);
        }

        var electrode = isOwn ? ["electrode if permanent,", "250.30(A)"] : Array.Empty<string>();
        _sketch.Lines(352, 62, [SupplyWords.AtSource(schedule), .. electrode], 7, Align.Right, 110);
    }

    private void Transfer()
    {
        _sketch.Box(Centre - 62, TransferTop, 176, TransferEnd - TransferTop, dashed: schedule.Transfer is null);
        if (schedule.Transfer?.Kind == TransferKind.Interlock) Interlock();
        else Symbols.ChangeOver(_sketch, Centre, TransferTop + 12, 40, 42);
        _sketch.Line(Centre, TransferTop + 54, Centre, TransferEnd);
        NeutralPole();
        _sketch.Lines(Centre + 122, TransferTop + 30, SupplyWords.Transfer(schedule.Transfer), room: Width - Centre - 126);
    }

    /// <summary>Two breakers, of which the dashed link lets only one be closed.</summary>
    private void Interlock()
    {
        foreach (var x in new[] { Centre - 40, Centre + 40 })
        {
            Symbols.BreakerDown(_sketch, x, TransferTop + 12);
            _sketch.Line(x, TransferTop + 36, x, TransferTop + 48);
            _sketch.Line(x, TransferTop + 48, Centre, TransferTop + 48);
        }

        _sketch.Line(Centre, TransferTop + 48, Centre, TransferTop + 54);
        _sketch.Line(Centre - 33, TransferTop + 24, Centre + 33, TransferTop + 24, dashed: true);
        _sketch.Text(Centre, TransferTop + 21, "interlock", 7, align: Align.Middle);
    }

    /// <summary>Beside the lines: a contact of its own where the neutral is switched, else a conductor that goes through.</summary>
    private void NeutralPole()
    {
        const double X = Centre + 88;
        _sketch.Text(X, TransferTop + 14, "N", 8, bold: true, align: Align.Middle);
        if (schedule.Transfer?.NeutralIsSwitched == true)
        {
            Symbols.ChangeOver(_sketch, X, TransferTop + 24, 12, 20);
            _sketch.Line(Centre - 18, TransferTop + 34, X - 6, TransferTop + 34, dashed: true);
            _sketch.Line(X, TransferTop + 44, X, TransferEnd - 6);
            return;
        }

        _sketch.Line(X, TransferTop + 18, X, TransferEnd - 6, 1.6, dashed: schedule.Transfer?.NeutralIsSwitched is null);
    }

    private void Feeder()
    {
        _sketch.Line(Centre, TransferEnd, Centre, PanelTop);
        for (var leg = 0; leg < schedule.Panel.System.Legs.Length; leg++)
            _sketch.Line(Centre - 4, 264 + (leg * 4), Centre + 4, 259 + (leg * 4));
        _sketch.Lines(Centre + 14, 262, SupplyWords.Feeder(schedule.Feeder));
    }
}
