using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Loads;

/// <summary>How loads and circuits are called in steps and findings.</summary>
public static class LoadWords
{
    extension(Circuit circuit)
    {
        /// <summary>Its name, or its space where it has none.</summary>
        public string Called => circuit.Name.Length > 0 ? circuit.Name
            : circuit.Id is { Length: > 0 } id ? id : $"space {circuit.Space}";
    }

    extension(LoadSize size)
    {
        /// <summary>What the size was reckoned from, such as `2 hp, 12 A (2 hp row, 230 V column) x 240 V, 3 alike`.</summary>
        public string Reckoning => size.Load.Count == 1 ? One(size) : $"{One(size)}, {Shown.Exactly(size.Load.Count)} alike";
    }

    private static string One(LoadSize size) => size.Load.Rating switch
    {
        LoadRating.InWatts watts when size.Load.PowerFactor.Value == 1 => $"{watts.Power}",
        LoadRating.InWatts watts => $"{watts.Power} / pf {size.Load.PowerFactor}",
        LoadRating.InVoltAmperes power => $"{power.Power}",
        LoadRating.InAmperes current => $"{current.Current} x {Times(size)}",
        LoadRating.InHorsepower motor => Motor(motor.Output, size),
        _ => Pieces(size.Load),
    };

    private static string Times(LoadSize size) => size.Placement.IsThreePhase ? $"{size.Volts} x root 3" : $"{size.Volts}";

    private static string Motor(Horsepower output, LoadSize size) => size.FromTable is not { } table
        ? $"{output}, not in {size.MotorTable.In(default).Section}, counted as nothing"
        : $"{output}, {table.Current} ({Row(output, table)}, {table.Column} column) x {Times(size)}";

    private static string Row(Horsepower output, TableCurrent table)
    {
        var row = table.Row.Value == 1m / 3 ? "1/3" : table.Row.Value == 1m / 6 ? "1/6" : Shown.Exactly(table.Row.Value);
        return table.Row.Value - output.Value > 0.001m ? $"next larger row, {row} hp" : $"{row} hp row";
    }

    private static string Pieces(Load load) => LoadSize.ByThePiece(load) is not { } piece
        ? "no rating, counted as nothing"
        : $"{(LoadSize.IsCountedByTheOutlet(load) ? $"{Shown.Exactly(load.Outlets)} x " : "")}{piece.Each}";
}
