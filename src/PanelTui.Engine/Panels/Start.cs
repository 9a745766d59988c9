using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>How a load starts: `6x` its full-load current, `code G`, or `47 A`.</summary>
public abstract record Start
{
    /// <summary>No inrush beyond the running current.</summary>
    public static readonly Start AtRunningCurrent = new Times(1);

    private protected Start()
    {
    }

    public sealed record Times(decimal Factor) : Start
    {
        public override string ToString() => $"{Shown.Exactly(Factor)}x";
    }

    /// <summary>A locked-rotor code letter, Table 430.7(B): A to V without I, O and Q.</summary>
    public sealed record CodeLetter(char Letter) : Start
    {
        public override string ToString() => $"code {Letter}";
    }

    public sealed record Current(Amperes LockedRotor) : Start
    {
        public override string ToString() => $"{LockedRotor}";
    }
}
