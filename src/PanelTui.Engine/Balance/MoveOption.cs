namespace PanelTui.Engine.Balance;

/// <summary>One way to shift the balance: circuits that are joined, or one alone, on other legs.</summary>
/// <param name="Circuits">The circuits that change their leg, and the leg of each one's top pole afterwards.</param>
/// <param name="Delta">What it adds to the legs but the last, scenario by scenario.</param>
/// <param name="Flow">What it adds to the slots in use on each leg.</param>
internal sealed record MoveOption((int Circuit, int Phase)[] Circuits, long[] Delta, int[] Flow)
{
    /// <summary>How many circuits change their space.</summary>
    public int Cost => Circuits.Length;
}

/// <summary>What is moved as one, with every way to move it that shifts the balance.</summary>
/// <param name="Twin">Whether it is interchangeable with the one before it: the same load, from the same leg.</param>
internal sealed record MovePiece(MoveOption[] Options, bool Twin);
