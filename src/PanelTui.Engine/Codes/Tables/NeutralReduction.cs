using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>What a feeder's neutral need not carry of the unbalanced load.</summary>
public static class NeutralReduction
{
    /// <summary>The largest load between the neutral and one leg.</summary>
    public static readonly CodeSection BasicSection = Nec.Section("220.61(A)");

    /// <summary>Household cooking and clothes dryers.</summary>
    public static readonly CodeSection HouseholdSection = Nec.Section("220.61(B)(1)");

    public static readonly Percent Household = 70.Pct;

    /// <summary>What is above 200 A.</summary>
    public static readonly CodeSection AboveSection = Nec.Section("220.61(B)(2)");

    public static readonly Amperes Above = 200.A;

    public static readonly Percent FactorAbove = 70.Pct;

    /// <summary>Three wires of a wye, and nonlinear loads on a wye.</summary>
    public static readonly CodeSection ProhibitedSection = Nec.Section("220.61(C)");

    /// <summary>The current with what is above 200 A at 70 %.</summary>
    public static Amperes Reduced(Amperes current) =>
        current <= Above ? current : Above + ((current - Above) * FactorAbove);
}
