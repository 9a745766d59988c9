namespace PanelTui.Tables;

/// <summary>What cannot stand in pasted rows.</summary>
/// <param name="Row">Which row, from 0.</param>
/// <param name="Cell">Which cell of it, from 0; nothing where the row as a whole does not go.</param>
/// <param name="Reason">Why, as a sentence that names the key.</param>
internal sealed record PasteProblem(int Row, int? Cell, string Reason);
