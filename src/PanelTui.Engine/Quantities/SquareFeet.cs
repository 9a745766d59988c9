namespace PanelTui.Engine.Quantities;

/// <summary>A floor area in square feet [ft2]: general lighting is counted by it.</summary>
/// <remarks>An area given in square metres is converted when it is read.</remarks>
public readonly record struct SquareFeet(decimal Value)
{
    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "ft2");
}
