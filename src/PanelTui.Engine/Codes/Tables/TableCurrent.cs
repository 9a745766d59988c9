using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>A current read from a table of motors, and the row and column it was read at.</summary>
/// <remarks>The row is the motor's own output, or the next larger one where the table has no such row.</remarks>
public readonly record struct TableCurrent(Amperes Current, Horsepower Row, Volts Column);
